package pilefolio.analysis.earth;

/**
 * An earthquake as coefficients on weight, as the user gives them.
 *
 * @param kH horizontal coefficient, more than zero
 * @param kV vertical coefficient, positive upward, less than 1
 */
public record Earthquake(double kH, double kV) {
  /** Height above the excavation at which the increment of active thrust acts, over the height. */
  public static final double PLACE = 0.6;

  /** Pressure of the increment at the top over its mean, for that place. */
  public static final double AT_TOP = 6 * PLACE - 2;

  /**
   * @throws OutsideRange if a coefficient leaves its range
   */
  public Earthquake {
    if (!(kH > 0 && kH < 1 && Math.abs(kV) < 1)) {
      throw new OutsideRange(
          "the coefficients of the earthquake must lie between 0 and 1; the vertical one may be"
              + " negative");
    }
  }

  /**
   * Inclination of the resultant, rad. In ground under water the earthquake acts on the saturated
   * weight and gravity on the buoyant one.
   *
   * @param layer layer
   * @param wet whether the layer is under water there
   * @param gammaWater unit weight of water, kN/m³
   */
  public double inclination(SoilLayer layer, boolean wet, double gammaWater) {
    double ratio =
        wet && !layer.isUndrained() ? layer.gammaBelow() / (layer.gammaBelow() - gammaWater) : 1;
    return MononobeOkabe.inclination(kH * ratio, kV);
  }

  /**
   * Increase of the active coefficient, horizontal: K_AE·(1 − k_v) − K_A in drained ground; k_h in
   * undrained ground, from a wedge at 45° that also carries k_h times its weight.
   *
   * @param layer layer
   * @param kA active coefficient without earthquake, horizontal
   * @param wet whether the layer is under water there
   * @param slopeRad slope of the ground, rad
   * @param gammaWater unit weight of water, kN/m³
   * @throws OutsideRange if no wedge is in equilibrium
   */
  public double activeIncrease(
      SoilLayer layer, double kA, boolean wet, double slopeRad, double gammaWater) {
    if (!(layer.strength() instanceof DrainedStrength s)) {
      return kH;
    }
    double psi = inclination(layer, wet, gammaWater);
    double kAe =
        MononobeOkabe.active(s.phiRad(), s.deltaActiveRad(), slopeRad, psi)
            * Math.cos(s.deltaActiveRad());
    return Math.max(0, kAe * (1 - kV) - kA);
  }

  /**
   * Passive coefficient in the earthquake, horizontal: the smaller of the one without earthquake
   * and K_PE·(1 − k_v) of a smooth wall in drained ground; reduced by k_h in undrained ground.
   *
   * @param layer layer
   * @param kP passive coefficient without earthquake, horizontal
   * @param wet whether the layer is under water there
   * @param gammaWater unit weight of water, kN/m³
   * @throws OutsideRange if no wedge is in equilibrium
   */
  public double passive(SoilLayer layer, double kP, boolean wet, double gammaWater) {
    if (!(layer.strength() instanceof DrainedStrength s)) {
      return kP - kH;
    }
    double psi = inclination(layer, wet, gammaWater);
    return Math.min(kP, MononobeOkabe.passive(s.phiRad(), psi) * (1 - kV));
  }
}
