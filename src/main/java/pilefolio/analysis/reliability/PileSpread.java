package pilefolio.analysis.reliability;

/**
 * Spread of the position of one pile on one axis, growing with depth.
 *
 * @param atTop standard deviation at the guide wall, mm, zero or more
 * @param perMetre standard deviation of the lean, mm per m of depth, zero or more
 */
public record PileSpread(double atTop, double perMetre) {

  /**
   * Checks the spread.
   *
   * @throws IllegalArgumentException if a value is negative or not a number
   */
  public PileSpread {
    if (!(atTop >= 0) || !(perMetre >= 0)) {
      throw new IllegalArgumentException("a standard deviation cannot be negative");
    }
  }

  /**
   * Spread that belongs to a pair of tolerances.
   *
   * @param positionTolerance tolerance at the guide wall, mm
   * @param verticality the n of 1 in n
   * @param convention what the tolerances mean
   * @return the spread
   */
  public static PileSpread of(
      double positionTolerance, double verticality, ToleranceConvention convention) {
    return new PileSpread(
        convention.sigma(positionTolerance), convention.sigma(1000 / verticality));
  }

  /**
   * Standard deviation at a depth.
   *
   * @param depth depth below the guide wall, m
   * @return the standard deviation, mm
   */
  public double at(double depth) {
    return Math.hypot(atTop, perMetre * depth);
  }

  /**
   * Depth at which the spread reaches a value.
   *
   * @param sigma standard deviation, mm
   * @return the depth, m; zero if the spread is reached at the top already, infinite if never
   */
  public double depthOf(double sigma) {
    if (sigma <= atTop) {
      return 0;
    }
    return perMetre == 0
        ? Double.POSITIVE_INFINITY
        : Math.sqrt(sigma * sigma - atTop * atTop) / perMetre;
  }
}
