package pilefolio.findings;

import java.util.Comparator;
import java.util.Objects;

/**
 * One thing that is wrong or odd in a workbook.
 *
 * @param severity how much it matters
 * @param code stable name of the kind of finding, such as {@code out-of-range}
 * @param where the cell
 * @param found what stands there
 * @param expected what would be right, and what to do
 */
public record Finding(
    Severity severity, String code, CellRef where, String found, String expected) {

  /** By sheet, row and column, then by code. */
  public static final Comparator<Finding> IN_ORDER =
      Comparator.comparing(Finding::where)
          .thenComparing(Finding::severity)
          .thenComparing(Finding::code)
          .thenComparing(Finding::found);

  /** Checks the parts. */
  public Finding {
    Objects.requireNonNull(severity);
    Objects.requireNonNull(code);
    Objects.requireNonNull(where);
    Objects.requireNonNull(found);
    Objects.requireNonNull(expected);
  }

  /** A finding that stops the run. */
  public static Finding error(String code, CellRef where, String found, String expected) {
    return new Finding(Severity.ERROR, code, where, found, expected);
  }

  /** A finding that lets the run go on. */
  public static Finding warning(String code, CellRef where, String found, String expected) {
    return new Finding(Severity.WARNING, code, where, found, expected);
  }

  /** One line for people: place, what was found, what is expected. */
  public String line(String workbook) {
    return workbook + " ▸ " + where.address() + " ▸ " + found + "; " + expected;
  }
}
