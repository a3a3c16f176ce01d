package pilefolio.workbook;

import java.util.Optional;
import pilefolio.findings.CellRef;

/**
 * One column of a table, or one item of a form.
 *
 * @param <T> what its cells become
 */
public sealed interface Column<T> permits NumberColumn, TextColumn, ChoiceColumn, DateColumn {
  /** Name in the head row. */
  String name();

  /** Whether a cell must be filled in. */
  Need need();

  /** What is meant, in one or two sentences. */
  String meaning();

  /** An example as it would be typed; numbers in the SI unit. */
  String example();

  /** What is expected, for the end of a finding. */
  String expected(pilefolio.units.Unit unit);

  /** Reads a cell that is not empty; empty if a finding was reported instead. */
  Optional<T> read(CellContent content, Place place);

  /** The default for an empty cell, if there is one. */
  Optional<T> standard(CellRef cell);

  /** The default in words; an empty text if there is none. */
  String standardText();
}
