package pilefolio.analysis.reliability;

/**
 * What a tolerance means for the spread of the deviations: how many standard deviations it stands
 * for. A document that prints a probability must name the one it used.
 */
public enum ToleranceConvention {
  /** Limit on one axis, met by 95 % of the piles on both sides together. */
  ONE_AXIS_95("95 % of piles within the limit on one axis", 1.959963984540054),
  /** Limit taken as two standard deviations on one axis. */
  TWO_SIGMA("the limit is two standard deviations", 2.0),
  /** Limit on the distance in plan, met by 95 % of the piles: √(−2 ln 0.05). */
  RADIAL_95("95 % of piles within the limit in plan", Math.sqrt(-2 * Math.log(0.05)));

  private final String meaning;
  private final double sigmas;

  ToleranceConvention(String meaning, double sigmas) {
    this.meaning = meaning;
    this.sigmas = sigmas;
  }

  /**
   * The convention in words, for print.
   *
   * @return the words
   */
  public String meaning() {
    return meaning;
  }

  /**
   * Number of standard deviations in the tolerance.
   *
   * @return the divisor
   */
  public double sigmas() {
    return sigmas;
  }

  /**
   * Standard deviation on one axis that belongs to a tolerance.
   *
   * @param tolerance the tolerance, any unit
   * @return the standard deviation in the same unit
   */
  public double sigma(double tolerance) {
    return tolerance / sigmas;
  }
}
