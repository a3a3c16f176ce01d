package pilefolio.checks;

import java.util.List;
import java.util.stream.Stream;
import pilefolio.checks.ground.GroundChecks;

/** The explicit list of all checks, in the order of the calculation package. */
public final class Checks {
  /** Every check. */
  public static final List<Check> ALL =
      Stream.<List<Check>>of(GroundChecks.ALL).flatMap(List::stream).toList();

  private Checks() {}
}
