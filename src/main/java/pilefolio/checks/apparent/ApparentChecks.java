package pilefolio.checks.apparent;

import java.util.List;
import pilefolio.checks.Check;

/** The checks of apparent pressure, in the order of the calculation package. */
public final class ApparentChecks {
  /** Every check of the family. */
  public static final List<Check> ALL =
      List.of(
          new ApparentPressure(),
          ApparentBeams.hinge(),
          ApparentBeams.tributary(),
          ApparentBeams.continuous(),
          new ApparentGoverns());

  private ApparentChecks() {}
}
