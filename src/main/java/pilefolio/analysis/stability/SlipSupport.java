package pilefolio.analysis.stability;

import pilefolio.analysis.earth.OutsideRange;

/**
 * A support that pulls or pushes the wall into the ground, with a known force.
 *
 * @param level where it meets the wall, m
 * @param force along its axis, kN/m, zero or more
 * @param inclinationRad below the horizontal, rad, 0 to less than π/2
 * @param freeLength length to the start of the bond, m; infinity for a prop, which always counts
 * @param bondLength length of the bond, m, zero or more
 */
public record SlipSupport(
    double level, double force, double inclinationRad, double freeLength, double bondLength) {

  public SlipSupport {
    if (!(force >= 0 && inclinationRad >= 0 && inclinationRad < Math.PI / 2)) {
      throw new OutsideRange(
          "a support has a force of zero or more and points down at most steeply");
    }
    if (!(freeLength >= 0 && bondLength >= 0)) {
      throw new OutsideRange("lengths of an anchor are zero or more");
    }
  }

  /** A horizontal prop. */
  public static SlipSupport prop(double level, double force) {
    return new SlipSupport(level, force, 0, Double.POSITIVE_INFINITY, 0);
  }

  /**
   * Share of the force that comes from beyond a circle: 1 if the whole bond lies beyond it, 0 if
   * none of it does.
   */
  public double share(SlipCircle circle) {
    if (Double.isInfinite(freeLength)) {
      return 1;
    }
    double inside = lengthInside(circle);
    if (inside <= freeLength) {
      return 1;
    }
    return Math.max(0, (freeLength + bondLength - inside) / bondLength);
  }

  private double lengthInside(SlipCircle circle) {
    double x = -circle.x();
    double y = level - circle.y();
    double cos = Math.cos(inclinationRad);
    double sin = Math.sin(inclinationRad);
    double half = x * cos - y * sin;
    double rest = x * x + y * y - circle.radius() * circle.radius();
    double root = half * half - rest;
    return root <= 0 ? 0 : -half + Math.sqrt(root);
  }

  /** Moment of the share about the centre of a circle against the slide, kN·m/m. */
  public double moment(SlipCircle circle) {
    return share(circle)
        * force
        * ((circle.y() - level) * Math.cos(inclinationRad) + circle.x() * Math.sin(inclinationRad));
  }
}
