package pilefolio.analysis.stability;

import pilefolio.analysis.earth.OutsideRange;

/**
 * The prism of ground in front of the wall that water lifts, after Terzaghi: as deep as the
 * embedment and half as wide.
 *
 * @param depth embedment D, m, more than zero
 * @param saturated unit weight of the ground below water, kN/m³
 * @param water unit weight of water, kN/m³
 * @param excessHead mean head under the prism above hydrostatic, m, more than zero
 */
public record HeavePrism(double depth, double saturated, double water, double excessHead) {

  public HeavePrism {
    if (!(depth > 0 && water > 0 && saturated > water && excessHead > 0)) {
      throw new OutsideRange("a prism needs a depth, ground heavier than water and an excess head");
    }
  }

  /** Submerged weight over seepage force, a factor of safety. */
  public double factor() {
    return (saturated - water) * depth / (water * excessHead);
  }

  /**
   * Utilisation in the form of forces, EN 1997-1 (2.9b): γ_dst·seepage force over γ_stb·submerged
   * weight.
   */
  public double utilisationByForces(double destabilising, double stabilising) {
    return destabilising * water * excessHead / (stabilising * (saturated - water) * depth);
  }

  /**
   * Utilisation in the form of total stress, EN 1997-1 (2.9a), with the factor on the whole pore
   * pressure: γ_dst·u over γ_stb·σ. It asks for more than the form of forces with the same factors.
   */
  public double utilisationByStress(double destabilising, double stabilising) {
    return destabilising * water * (depth + excessHead) / (stabilising * saturated * depth);
  }
}
