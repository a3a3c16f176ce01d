package pilefolio.checks.pile;

import java.util.List;
import pilefolio.checks.Check;

/** The checks of vertical capacity. */
public final class PileChecks {
  /** Every check of the family. */
  public static final List<Check> ALL = List.of(new PileAxialCapacity());

  private PileChecks() {}
}
