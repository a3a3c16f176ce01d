package pilefolio.analysis.apparent;

import java.util.List;
import pilefolio.analysis.earth.OutsideRange;

/**
 * Trapezoids whose ramps follow the support levels: two thirds of the height above the first
 * support and two thirds of the height below the last, as FHWA-IF-99-015 draws them for anchored
 * walls with one and with many levels.
 */
public final class AnchorTrapezoid {
  private static final double SAND_LOAD = 0.65;
  private static final double SAND_LOAD_LRFD = 2.0 / 3;

  private AnchorTrapezoid() {}

  /** Total load in sand, kN/m: 0.65·K_a·γ·H². */
  public static double sandLoad(double gamma, double height, double kA) {
    return SAND_LOAD * kA * gamma * height * height;
  }

  /**
   * Total load in sand that AASHTO LRFD's ordinate K_a·γ·H²/(1.5·H − 0.5·H_1 − 0.5·H_{n+1}) stands
   * for, kN/m: ⅔·K_a·γ·H².
   */
  public static double sandLoadLrfd(double gamma, double height, double kA) {
    return SAND_LOAD_LRFD * kA * gamma * height * height;
  }

  /**
   * Total load in stiff clay, kN/m: 0.2 to 0.4·γ·H².
   *
   * @throws OutsideRange if the share lies outside 0.2 to 0.4
   */
  public static double stiffClayLoad(double gamma, double height, double share) {
    if (!(share >= 0.2 && share <= 0.4)) {
      throw new OutsideRange(
          "the total load in stiff clay lies between 0.2 and 0.4·γ·H², not " + share);
    }
    return share * gamma * height * height;
  }

  /**
   * The trapezoid that holds a total load.
   *
   * @param top ground level behind, m
   * @param excavation excavation level, m
   * @param supports support levels from the top down, m, strictly between top and excavation or at
   *     the top
   * @param load total load, kN/m
   */
  public static ApparentEnvelope holding(
      double top, double excavation, List<Double> supports, double load) {
    SupportLevels.require(supports, top, excavation);
    double h = top - excavation;
    double first = top - supports.get(0);
    double last = supports.get(supports.size() - 1) - excavation;
    return new ApparentEnvelope(
        top, excavation, load / (h - first / 3 - last / 3), 2 * first / 3, 2 * last / 3);
  }
}
