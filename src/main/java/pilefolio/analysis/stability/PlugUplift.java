package pilefolio.analysis.stability;

import java.util.List;
import pilefolio.analysis.earth.OutsideRange;

/**
 * A plug of ground of low permeability lifted by the water under it.
 *
 * @param weight total weight of the plug and of the water on it, kPa, more than zero
 * @param pressure water pressure under it, kPa, more than zero
 */
public record PlugUplift(double weight, double pressure) {

  public PlugUplift {
    if (!(weight > 0 && pressure > 0)) {
      throw new OutsideRange("a plug needs weight and water pressure under it");
    }
  }

  /**
   * A plug of one or more layers.
   *
   * @param layers thickness (m) and unit weight (kN/m³) of each
   * @param head piezometric head at the underside, m
   * @param water unit weight of water, kN/m³
   */
  public static PlugUplift of(List<double[]> layers, double head, double water) {
    return new PlugUplift(layers.stream().mapToDouble(l -> l[0] * l[1]).sum(), head * water);
  }

  /** Weight over water pressure. */
  public double factor() {
    return weight / pressure;
  }

  /** Utilisation of EN 1997-1 UPL without friction: γ_dst·pressure over γ_stb·weight. */
  public double utilisation(double destabilising, double stabilising) {
    return destabilising * pressure / (stabilising * weight);
  }
}
