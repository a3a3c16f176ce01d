package pilefolio.model;

import java.util.List;
import pilefolio.findings.CellRef;

/**
 * The design basis of the job.
 *
 * @param at the cell that names it
 * @param basis id of the basis, {@code us-asd} or {@code ec7-da1}
 * @param overrides factors set by the user, in the order of the workbook
 */
public record BasisChoice(CellRef at, String basis, List<FactorOverride> overrides) {
  /** Copies the list. */
  public BasisChoice {
    overrides = List.copyOf(overrides);
  }
}
