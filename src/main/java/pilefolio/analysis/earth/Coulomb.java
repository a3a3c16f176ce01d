package pilefolio.analysis.earth;

/**
 * Coefficients on plane slip surfaces with wall friction, vertical wall. Angles in radians; results
 * act along the wall friction angle, so the horizontal component is K·cos δ. Equations: UFC
 * 3-220-20 Eq. 4-10 and 4-11.
 */
public final class Coulomb {
  private static final double GREATEST_PASSIVE_FRICTION_RATIO = 0.4;

  private Coulomb() {}

  /**
   * Active coefficient along δ.
   *
   * @param betaRad slope of the ground behind the wall, positive when it rises away from the wall
   * @throws OutsideRange if the slope is steeper than φ
   */
  public static double active(double phiRad, double deltaRad, double betaRad) {
    if (betaRad > phiRad) {
      throw new OutsideRange("the ground slope is steeper than the angle of shearing resistance");
    }
    double root =
        Math.sqrt(
            Math.sin(phiRad + deltaRad)
                * Math.sin(phiRad - betaRad)
                / (Math.cos(deltaRad) * Math.cos(betaRad)));
    return square(Math.cos(phiRad)) / (Math.cos(deltaRad) * square(1 + root));
  }

  /**
   * Passive coefficient along δ.
   *
   * @param betaRad slope of the ground in front, positive when it rises away from the wall
   * @throws OutsideRange if no plane surface is critical, or the ground falls steeper than φ
   */
  public static double passive(double phiRad, double deltaRad, double betaRad) {
    if (-betaRad > phiRad) {
      throw new OutsideRange("the ground slope is steeper than the angle of shearing resistance");
    }
    double root =
        Math.sqrt(
            Math.sin(phiRad + deltaRad)
                * Math.sin(phiRad + betaRad)
                / (Math.cos(deltaRad) * Math.cos(betaRad)));
    if (root >= 1) {
      throw new OutsideRange(
          "passive resistance on a plane surface grows without limit for this friction and slope");
    }
    return square(Math.cos(phiRad)) / (Math.cos(deltaRad) * square(1 - root));
  }

  /**
   * Whether plane surfaces overstate passive resistance: δ/φ above 0.4 (UFC 3-220-20, note to Eq.
   * 4-11).
   */
  public static boolean passiveIsUnsafe(double phiRad, double deltaRad) {
    return deltaRad > GREATEST_PASSIVE_FRICTION_RATIO * phiRad * (1 + 1e-12);
  }

  private static double square(double x) {
    return x * x;
  }
}
