package pilefolio.analysis.load;

/**
 * A uniform strip parallel to the wall, elastic stress doubled: (2q/π)·(β − sin β·cos 2α), where β
 * is the angle under which the strip is seen from the point on the wall and α that from the
 * vertical to its bisector. From memory of Das, Principles of Foundation Engineering, and Jarquio
 * (1981).
 *
 * @param near distance from the wall to the near edge, m, zero or more
 * @param width width of the strip, m, more than zero
 * @param q load on it, kPa, zero or more
 */
public record StripLoad(double near, double width, double q) implements LocalLoad {

  /**
   * @throws IllegalArgumentException if a value leaves the range stated for it
   */
  public StripLoad {
    LocalLoad.requireNotNegative(near, "distance of the strip");
    LocalLoad.requirePositive(width, "width of the strip");
    LocalLoad.requireNotNegative(q, "load on the strip");
  }

  @Override
  public double pressure(double depth) {
    if (!(depth > 0)) {
      return 0;
    }
    double toNear = Math.atan(near / depth);
    double toFar = Math.atan((near + width) / depth);
    double beta = toFar - toNear;
    // The angle to the bisector is half the sum, so twice it is the sum.
    return 2 * q / Math.PI * (beta - Math.sin(beta) * Math.cos(toNear + toFar));
  }

  @Override
  public StripLoad times(double factor) {
    return new StripLoad(near, width, q * factor);
  }

  /** Resultant down to a depth, kN per metre of wall: (2q/π)·H·(θ2 − θ1). */
  public double resultant(double depth) {
    return 2 * q / Math.PI * depth * (Math.atan((near + width) / depth) - Math.atan(near / depth));
  }
}
