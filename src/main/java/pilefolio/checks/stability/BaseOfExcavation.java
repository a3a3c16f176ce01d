package pilefolio.checks.stability;

import java.util.OptionalDouble;
import pilefolio.analysis.earth.SoilLayer;
import pilefolio.analysis.earth.SoilProfile;
import pilefolio.checks.situation.DesignSituation;

/**
 * The ground beside and below the base of an excavation in a situation, kN and m.
 *
 * @param situation the situation
 * @param profile layers with design values
 * @param base design excavation level, m
 */
record BaseOfExcavation(DesignSituation situation, SoilProfile profile, double base) {
  private static final double JUST = 1e-6;

  static BaseOfExcavation of(DesignSituation situation) {
    return new BaseOfExcavation(situation, situation.designProfile(), situation.designExcavation());
  }

  /** True if the layer under the base acts undrained. */
  boolean undrained() {
    return profile.below(base - JUST).isUndrained();
  }

  /**
   * Level of the first layer below the base that does not act undrained; empty if there is none.
   */
  OptionalDouble stiffLayer() {
    for (SoilLayer layer : profile.layers()) {
      if (layer.topLevel() < base && !layer.isUndrained()) {
        return OptionalDouble.of(layer.topLevel());
      }
    }
    return OptionalDouble.empty();
  }

  /** Mean undrained strength between two levels, kPa; drained ground counts with none. */
  double meanStrength(double top, double bottom) {
    double sum = 0;
    for (SoilLayer layer : profile.layers()) {
      double upper = Math.min(top, layer.topLevel());
      double lower = Math.max(bottom, layer.bottomLevel());
      if (upper > lower && layer.isUndrained()) {
        sum += (upper - lower) * layer.cohesionAt((upper + lower) / 2);
      }
    }
    return sum / (top - bottom);
  }

  /** Mean total unit weight between two levels with water at a level, kN/m³. */
  double meanWeight(double top, double bottom, double water) {
    double sum = 0;
    for (SoilLayer layer : profile.layers()) {
      double upper = Math.min(top, layer.topLevel());
      double lower = Math.max(bottom, layer.bottomLevel());
      if (upper > lower) {
        double wet = Math.max(0, Math.min(upper, water) - lower);
        sum += layer.gammaBelow() * wet + layer.gammaAbove() * (upper - lower - wet);
      }
    }
    return sum / (top - bottom);
  }
}
