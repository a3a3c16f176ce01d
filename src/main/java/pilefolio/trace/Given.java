package pilefolio.trace;

import java.util.Objects;

/**
 * A value handed to a calculation, with its origin.
 *
 * @param si coherent SI value
 * @param source where it comes from
 */
public record Given(double si, Source source) {
  /** Checks the parts. */
  public Given {
    Objects.requireNonNull(source);
  }
}
