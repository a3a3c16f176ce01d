package pilefolio.analysis.earth;

/**
 * Earth pressure in an earthquake on plane surfaces, vertical wall: Mononobe and Okabe. Equations:
 * UFC 3-220-20 Eq. 4-15 to 4-20. Angles in radians; coefficients along the wall friction multiply
 * the weight times (1 − k_v).
 */
public final class MononobeOkabe {
  private MononobeOkabe() {}

  /**
   * Inclination of the resultant of gravity and earthquake, rad: atan[k_h/(1 − k_v)].
   *
   * @param kH horizontal coefficient, zero or more
   * @param kV vertical coefficient, positive upward, less than 1
   * @throws OutsideRange if a coefficient leaves its range
   */
  public static double inclination(double kH, double kV) {
    if (!(kH >= 0 && kV < 1)) {
      throw new OutsideRange(
          "the horizontal coefficient of the earthquake must be zero or more and the vertical one"
              + " less than 1");
    }
    return Math.atan(kH / (1 - kV));
  }

  /**
   * Active coefficient K_AE along the wall friction.
   *
   * @param betaRad slope of the ground, positive when it rises away from the wall
   * @param psiRad inclination by {@link #inclination}
   * @throws OutsideRange if φ − β − ψ is negative: the slope itself would not stand
   */
  public static double active(double phiRad, double deltaRad, double betaRad, double psiRad) {
    double stands = phiRad - betaRad - psiRad;
    if (!(stands >= 0)) {
      throw new OutsideRange(
          String.format(
              java.util.Locale.ROOT,
              "friction angle less slope less the inclination of the earthquake is %.1f degrees;"
                  + " below zero no wedge is in equilibrium",
              Math.toDegrees(stands)));
    }
    double root =
        Math.sqrt(
            Math.sin(phiRad + deltaRad)
                * Math.sin(stands)
                / (Math.cos(deltaRad + psiRad) * Math.cos(betaRad)));
    double c = Math.cos(phiRad - psiRad);
    return c * c / (Math.cos(psiRad) * Math.cos(deltaRad + psiRad) * (1 + root) * (1 + root));
  }

  /**
   * Passive coefficient K_PE of a smooth wall and level ground; wall friction is left out, as EN
   * 1998-5 does, because plane surfaces overstate it.
   *
   * @throws OutsideRange if φ − ψ is negative
   */
  public static double passive(double phiRad, double psiRad) {
    if (!(phiRad - psiRad >= 0)) {
      throw new OutsideRange(
          "the friction angle is smaller than the inclination of the earthquake; no wedge is in"
              + " equilibrium");
    }
    double root = Math.sqrt(Math.sin(phiRad) * Math.sin(phiRad - psiRad) / Math.cos(psiRad));
    double c = Math.cos(phiRad - psiRad);
    return c * c / (Math.cos(psiRad) * Math.cos(psiRad) * (1 - root) * (1 - root));
  }

  /** Increment of thrust after Seed and Whitman, kN/m: ⅜·k_h·γ·H², at 0.6·H above the base. */
  public static double seedWhitman(double kH, double gamma, double height) {
    return 0.375 * kH * gamma * height * height;
  }

  /** Increment of thrust on a wall that does not yield, kN/m: k_h·γ·H² (Wood). */
  public static double nonYielding(double kH, double gamma, double height) {
    return kH * gamma * height * height;
  }

  /**
   * Hydrodynamic pressure of free water, kPa: 0.875·k_h·γ_w·√(H·z).
   *
   * @param depth depth z below the water surface, m
   * @param waterDepth depth H of the free water, m
   */
  public static double hydrodynamic(double kH, double gammaWater, double depth, double waterDepth) {
    return 0.875 * kH * gammaWater * Math.sqrt(waterDepth * Math.max(0, depth));
  }

  /** Resultant of it over the whole depth of the free water, kN/m: 7/12·k_h·γ_w·H². */
  public static double hydrodynamicForce(double kH, double gammaWater, double waterDepth) {
    return 7.0 / 12 * kH * gammaWater * waterDepth * waterDepth;
  }
}
