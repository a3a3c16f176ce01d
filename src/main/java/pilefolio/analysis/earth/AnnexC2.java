package pilefolio.analysis.earth;

/**
 * The closed-form procedure of EN 1997-1:2004 Annex C, C.2, for passive and active pressure with
 * wall friction. Angles in radians. Cohesion c and adhesion a are in the ratio a/c = tan δ/tan φ,
 * which the closed form of K_c assumes; for φ = 0 the ratio a/c is free.
 */
public final class AnnexC2 {
  private AnnexC2() {}

  /**
   * Result of the procedure; coefficients are normal to the wall.
   *
   * @param fan the angles and K_n
   * @param kQ coefficient on a vertical surface load
   * @param kC coefficient on cohesion, positive for both sides
   * @param kGamma coefficient on the weight of the ground
   */
  public record Result(SlipFan fan, double kQ, double kC, double kGamma) {}

  /**
   * Passive coefficients, φ more than zero.
   *
   * @param betaRad slope of the ground, positive when it rises away from the wall
   * @param thetaRad inclination of the wall
   * @throws OutsideRange if δ exceeds φ, the slope exceeds φ, or the fan angle v is negative
   */
  public static Result passive(double phiRad, double deltaRad, double betaRad, double thetaRad) {
    return signed(phiRad, deltaRad, betaRad, thetaRad);
  }

  /**
   * Active coefficients, φ more than zero.
   *
   * @param betaRad slope of the ground, positive when it rises away from the wall
   * @param thetaRad inclination of the wall
   * @throws OutsideRange if δ exceeds φ, the slope exceeds φ, or the fan angle v is negative
   */
  public static Result active(double phiRad, double deltaRad, double betaRad, double thetaRad) {
    return signed(-phiRad, -deltaRad, betaRad, thetaRad);
  }

  // The annex enters the active case with φ and δ negative; one body then serves both.
  private static Result signed(double phi, double delta, double beta, double theta) {
    double sinPhi = Math.sin(phi);
    double surface = -Math.sin(beta) / sinPhi;
    double wall = Math.sin(delta) / sinPhi;
    if (Math.abs(surface) > 1 || Math.abs(wall) > 1 + 1e-12) {
      throw new OutsideRange(
          "slope and wall friction must not exceed the angle of shearing resistance");
    }
    double mT = (Math.acos(surface) - phi - beta) / 2;
    double mW = (Math.acos(Math.min(1, wall)) - phi - delta) / 2;
    double v = mT + beta - mW - theta;
    if (v < -1e-12) {
      throw new OutsideRange(
          "the procedure needs a fan angle of zero or more; for this slope and friction it is "
              + Math.toDegrees(v)
              + " degrees");
    }
    double kN =
        (1 + sinPhi * Math.sin(2 * mW + phi))
            / (1 - sinPhi * Math.sin(2 * mT + phi))
            * Math.exp(2 * v * Math.tan(phi));
    double cosBeta = Math.cos(beta);
    double kC = Math.abs((kN - 1) / Math.tan(phi));
    return new Result(
        new SlipFan(mT, mW, v, kN),
        kN * cosBeta * cosBeta,
        kC,
        kN * cosBeta * Math.cos(beta - theta));
  }

  /**
   * Coefficient on undrained strength for φ = 0, level ground and a vertical wall; the same for
   * both sides.
   *
   * @param adhesionRatio a/c, 0 to 1
   */
  public static Result undrained(double adhesionRatio) {
    if (!(adhesionRatio >= 0 && adhesionRatio <= 1)) {
      throw new OutsideRange("adhesion ratio must lie between 0 and 1, is " + adhesionRatio);
    }
    double mT = Math.PI / 4;
    double mW = Math.acos(adhesionRatio) / 2;
    double v = mT - mW;
    double kC = 2 * v + Math.sin(2 * mT) + Math.sin(2 * mW);
    return new Result(new SlipFan(mT, mW, v, 1), 1, kC, 1);
  }
}
