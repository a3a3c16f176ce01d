package pilefolio.analysis.earth;

/**
 * Coefficients of a smooth vertical wall after Rankine. Angles in radians. Level ground: closed
 * form, UFC 3-220-20 Eq. 4-3 and 4-4.
 */
public final class Rankine {
  private Rankine() {}

  /** Active coefficient, level ground: tan²(45° − φ/2). */
  public static double active(double phiRad) {
    double t = Math.tan(Math.PI / 4 - phiRad / 2);
    return t * t;
  }

  /** Passive coefficient, level ground: tan²(45° + φ/2). */
  public static double passive(double phiRad) {
    double t = Math.tan(Math.PI / 4 + phiRad / 2);
    return t * t;
  }

  /**
   * Active coefficient under ground that rises at a slope; the pressure acts parallel to the slope.
   *
   * @throws OutsideRange if the slope is steeper than φ
   */
  public static double activeParallelToSlope(double phiRad, double betaRad) {
    double root = slopeRoot(phiRad, betaRad);
    double c = Math.cos(betaRad);
    return c * (c - root) / (c + root);
  }

  /**
   * Passive coefficient under ground that rises at a slope; the pressure acts parallel to the
   * slope.
   *
   * @throws OutsideRange if the slope is steeper than φ
   */
  public static double passiveParallelToSlope(double phiRad, double betaRad) {
    double root = slopeRoot(phiRad, betaRad);
    double c = Math.cos(betaRad);
    return c * (c + root) / (c - root);
  }

  private static double slopeRoot(double phiRad, double betaRad) {
    if (!(Math.abs(betaRad) <= phiRad * (1 + 1e-12))) {
      throw new OutsideRange("the ground slope is steeper than the angle of shearing resistance");
    }
    double c = Math.cos(betaRad);
    double p = Math.cos(phiRad);
    return Math.sqrt(Math.max(0, c * c - p * p));
  }
}
