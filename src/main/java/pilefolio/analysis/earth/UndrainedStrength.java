package pilefolio.analysis.earth;

/**
 * Total-stress strength, linear with depth in the layer.
 *
 * @param suTop undrained shear strength at the top of the layer, kPa, more than zero; zero only
 *     where it increases below
 * @param suIncrease increase of strength with depth below the top of the layer, kPa/m, zero or more
 * @param adhesionRatio wall adhesion over undrained strength, 0 to 1
 */
public record UndrainedStrength(double suTop, double suIncrease, double adhesionRatio)
    implements Strength {

  /**
   * @throws OutsideRange if a value leaves the range stated for it
   */
  public UndrainedStrength {
    if (!(suTop > 0 || (suTop == 0 && suIncrease > 0))) {
      throw new OutsideRange("undrained strength must be more than zero, is " + suTop + " kPa");
    }
    if (!(suIncrease >= 0)) {
      throw new OutsideRange(
          "undrained strength must not fall with depth inside a layer, increase is "
              + suIncrease
              + " kPa/m");
    }
    if (!(adhesionRatio >= 0 && adhesionRatio <= 1)) {
      throw new OutsideRange("adhesion ratio must lie between 0 and 1, is " + adhesionRatio);
    }
  }

  /** Undrained strength, kPa, at a depth below the top of the layer, m. */
  public double at(double depthInLayer) {
    return suTop + suIncrease * depthInLayer;
  }
}
