package pilefolio.analysis.earth;

/**
 * Ground, water and load on one side of the wall, characteristic values.
 *
 * @param groundLevel level of the ground surface, m
 * @param waterLevel level of the water, m; above the ground it is free water
 * @param permanentSurcharge uniform permanent load on the surface, kPa
 * @param variableSurcharge uniform variable load on the surface, kPa; it never helps, so it is left
 *     out of passive pressure
 */
public record Side(
    double groundLevel, double waterLevel, double permanentSurcharge, double variableSurcharge) {

  public Side {
    if (!(permanentSurcharge >= 0 && variableSurcharge >= 0)) {
      throw new OutsideRange("surcharges must be zero or more");
    }
  }

  /** A side with no load on it. */
  public static Side unloaded(double groundLevel, double waterLevel) {
    return new Side(groundLevel, waterLevel, 0, 0);
  }

  /**
   * The same side after the ground has been dug lower by a depth, m. Water that did not stand above
   * the ground before is taken not to stand above it afterwards.
   */
  public Side loweredBy(double depth) {
    double lowered = groundLevel - depth;
    double water = waterLevel <= groundLevel ? Math.min(waterLevel, lowered) : waterLevel;
    return new Side(lowered, water, permanentSurcharge, variableSurcharge);
  }
}
