package pilefolio.analysis.stability;

import pilefolio.analysis.earth.OutsideRange;

/** The upward gradient at which ground loses its effective stress. */
public final class CriticalGradient {
  private CriticalGradient() {}

  /**
   * From grain density and void ratio: (G_s − 1)/(1 + e).
   *
   * @param specificGravity G_s, more than 1
   * @param voidRatio e, more than 0
   */
  public static double ofGrains(double specificGravity, double voidRatio) {
    if (!(specificGravity > 1 && voidRatio > 0)) {
      throw new OutsideRange("grains must be denser than water and the void ratio more than zero");
    }
    return (specificGravity - 1) / (1 + voidRatio);
  }

  /**
   * From unit weights: (γ_sat − γ_w)/γ_w.
   *
   * @param saturated unit weight below water, kN/m³
   * @param water unit weight of water, kN/m³, more than zero
   */
  public static double ofWeights(double saturated, double water) {
    if (!(water > 0 && saturated > water)) {
      throw new OutsideRange("saturated ground must be heavier than water");
    }
    return (saturated - water) / water;
  }
}
