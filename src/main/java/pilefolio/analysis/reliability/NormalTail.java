package pilefolio.analysis.reliability;

import org.hipparchus.special.Erf;

/** The standard normal distribution: density, upper tail and its inverse. */
final class NormalTail {
  private static final double ROOT_TWO = Math.sqrt(2);
  private static final double ROOT_TWO_PI = Math.sqrt(2 * Math.PI);

  private NormalTail() {}

  static double density(double x) {
    return Math.exp(-x * x / 2) / ROOT_TWO_PI;
  }

  /** Probability of a value above x. */
  static double above(double x) {
    if (x == Double.POSITIVE_INFINITY) {
      return 0;
    }
    return x == Double.NEGATIVE_INFINITY ? 1 : Erf.erfc(x / ROOT_TWO) / 2;
  }

  /** The value that is exceeded with a probability between 0 and 1. */
  static double exceeded(double probability) {
    return ROOT_TWO * Erf.erfcInv(2 * probability);
  }
}
