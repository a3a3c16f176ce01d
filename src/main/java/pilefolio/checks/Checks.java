package pilefolio.checks;

import java.util.List;
import java.util.stream.Stream;

/** The explicit list of all checks, in the order of the calculation package. */
public final class Checks {
  /** Every check. */
  public static final List<Check> ALL = Stream.<List<Check>>of().flatMap(List::stream).toList();

  private Checks() {}
}
