package pilefolio.analysis.earth;

/**
 * Effective-stress strength.
 *
 * @param cohesion effective cohesion c', kPa, zero or more
 * @param phiRad angle of shearing resistance φ', rad, more than 0 and less than π/3
 * @param deltaActiveRad angle of wall friction on the active side, rad, 0 to φ'
 * @param deltaPassiveRad angle of wall friction on the passive side, rad, 0 to φ'
 */
public record DrainedStrength(
    double cohesion, double phiRad, double deltaActiveRad, double deltaPassiveRad)
    implements Strength {

  /**
   * @throws OutsideRange if a value leaves the range stated for it
   */
  public DrainedStrength {
    if (!(cohesion >= 0)) {
      throw new OutsideRange("effective cohesion must be zero or more, is " + cohesion + " kPa");
    }
    if (!(phiRad > 0 && phiRad < Math.PI / 3)) {
      throw new OutsideRange(
          "angle of shearing resistance must lie between 0 and 60 degrees, is "
              + Math.toDegrees(phiRad));
    }
    requireFriction(deltaActiveRad, phiRad);
    requireFriction(deltaPassiveRad, phiRad);
  }

  /**
   * The same strength with wall friction as a share of φ'.
   *
   * @param cohesion c', kPa
   * @param phiDeg φ', degrees
   * @param activeRatio δ/φ' on the active side, 0 to 1
   * @param passiveRatio δ/φ' on the passive side, 0 to 1
   */
  public static DrainedStrength ofDegrees(
      double cohesion, double phiDeg, double activeRatio, double passiveRatio) {
    double phi = Math.toRadians(phiDeg);
    return new DrainedStrength(cohesion, phi, activeRatio * phi, passiveRatio * phi);
  }

  private static void requireFriction(double deltaRad, double phiRad) {
    if (!(deltaRad >= 0 && deltaRad <= phiRad * (1 + 1e-12))) {
      throw new OutsideRange(
          "wall friction must lie between 0 and the angle of shearing resistance, is "
              + Math.toDegrees(deltaRad)
              + " degrees");
    }
  }
}
