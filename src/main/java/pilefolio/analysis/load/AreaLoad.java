package pilefolio.analysis.load;

/**
 * A uniform load on a rectangle with sides along and across the wall, elastic stress of ground that
 * keeps its volume, doubled: (q/π) times the sum over the corners of ±[atan(xy/(zR)) − xyz/((x² +
 * z²)·R)]. The point load integrated over the area; after Holl (1940).
 *
 * @param near distance from the wall to the near edge, m, zero or more
 * @param width width across the wall, m, more than zero
 * @param length length along the wall, m, more than zero
 * @param offset distance along the wall from the middle of the area to the section considered, m
 * @param q load on it, kPa, zero or more
 */
public record AreaLoad(double near, double width, double length, double offset, double q)
    implements LocalLoad {

  /**
   * @throws IllegalArgumentException if a value leaves the range stated for it
   */
  public AreaLoad {
    LocalLoad.requireNotNegative(near, "distance of the loaded area");
    LocalLoad.requirePositive(width, "width of the loaded area");
    LocalLoad.requirePositive(length, "length of the loaded area");
    LocalLoad.requireNotNegative(Math.abs(offset), "offset of the loaded area");
    LocalLoad.requireNotNegative(q, "load on the area");
  }

  @Override
  public double pressure(double depth) {
    if (!(depth > 0)) {
      return 0;
    }
    double far = near + width;
    double right = length / 2 - offset;
    double left = -length / 2 - offset;
    double sum =
        corner(far, right, depth)
            - corner(near, right, depth)
            - corner(far, left, depth)
            + corner(near, left, depth);
    return q / Math.PI * sum;
  }

  /** Contribution of one corner; odd in y. */
  public static double corner(double x, double y, double z) {
    double r = Math.sqrt(x * x + y * y + z * z);
    return Math.atan(x * y / (z * r)) - x * y * z / ((x * x + z * z) * r);
  }

  @Override
  public AreaLoad times(double factor) {
    return new AreaLoad(near, width, length, offset, q * factor);
  }
}
