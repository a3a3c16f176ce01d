package pilefolio.checks.sensitivity;

import java.util.List;
import pilefolio.checks.Check;

/** The checks of sensitivity. */
public final class SensitivityChecks {
  /** Every check of the family. */
  public static final List<Check> ALL = List.of(new Sensitivity());

  private SensitivityChecks() {}
}
