package pilefolio.analysis.stability;

import java.util.OptionalDouble;
import pilefolio.analysis.earth.OutsideRange;

/**
 * Heave of the base of an excavation in undrained ground.
 *
 * @param strength undrained strength s_u, kPa, more than zero
 * @param unitWeight mean unit weight of the ground beside the excavation, kN/m³, more than zero
 * @param depth depth of the excavation H, m, more than zero
 * @param width width of the excavation B, m, more than zero
 * @param load surcharge beside the excavation, kPa, zero or more
 */
public record BasalHeave(
    double strength, double unitWeight, double depth, double width, double load) {

  private static final double TERZAGHI = 5.7;
  private static final double DEEP_FROM = 1;

  public BasalHeave {
    if (!(strength > 0 && unitWeight > 0 && depth > 0 && width > 0 && load >= 0)) {
      throw new OutsideRange(
          "strength, unit weight, depth and width must be more than zero, the load zero or more");
    }
  }

  /**
   * Width of the column of ground that drives the heave: B/√2, or the depth to a hard layer if that
   * is less.
   *
   * @param toHardLayer depth of a hard layer below the base, m; infinity if there is none
   */
  public double drivingWidth(double toHardLayer) {
    if (!(toHardLayer > 0)) {
      throw new OutsideRange("a hard layer must lie below the base");
    }
    return Math.min(width / Math.sqrt(2), toHardLayer);
  }

  /**
   * Factor of safety after Terzaghi (1943): 5.7·c/(H·(γ + q/H − c/B')).
   *
   * @param toHardLayer depth of a hard layer below the base, m; infinity if there is none
   * @return the factor; empty if the strength along the side of the column carries all of it, so
   *     that nothing drives a heave
   */
  public OptionalDouble terzaghi(double toHardLayer) {
    double net = unitWeight + load / depth - strength / drivingWidth(toHardLayer);
    return net > 0
        ? OptionalDouble.of(TERZAGHI * strength / (depth * net))
        : OptionalDouble.empty();
  }

  /**
   * Factor of safety after Bjerrum and Eide (1956): N_c·s_u/(γ·H + q).
   *
   * @param planRatio width over length; 0 for a long excavation
   * @throws OutsideRange if the excavation is not deeper than it is wide
   */
  public double bjerrumEide(double planRatio) {
    double ratio = depth / width;
    if (!(ratio > DEEP_FROM)) {
      throw new OutsideRange(
          "the chart of Bjerrum and Eide is for excavations deeper than wide; depth over width is "
              + ratio);
    }
    double factor =
        planRatio == 0
            ? HeaveFactors.bjerrumEideStrip(ratio)
            : HeaveFactors.bjerrumEide(ratio, planRatio);
    return factor * strength / pressure();
  }

  /**
   * Factor of safety with N_c after Skempton.
   *
   * @param planRatio width over length; 0 for a long excavation
   */
  public double skempton(double planRatio) {
    return HeaveFactors.skempton(depth / width, planRatio) * strength / pressure();
  }

  /**
   * Factor of safety with shear on the sides of the column, after Chang (2000), from memory:
   * (5.14·c·(1 + 0.2·B'/L) + c·H/B')/(γ·H + q).
   *
   * @param length length of the excavation, m; infinity for a long one
   * @param toHardLayer depth of a hard layer below the base, m; infinity if there is none
   */
  public double chang(double length, double toHardLayer) {
    if (!(length >= width)) {
      throw new OutsideRange("the length of an excavation is not less than its width");
    }
    double b = drivingWidth(toHardLayer);
    return (5.14 * strength * (1 + 0.2 * b / length) + strength * depth / b) / pressure();
  }

  private double pressure() {
    return unitWeight * depth + load;
  }
}
