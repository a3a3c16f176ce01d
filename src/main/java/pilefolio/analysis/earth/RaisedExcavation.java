package pilefolio.analysis.earth;

/**
 * Ground left standing against the wall, replaced by an excavation that is raised over its whole
 * width: by half the height at which a plane of 1 in 3 from the foot of the berm meets the wall,
 * and by no more than half the height of the berm. After Fleming et al., Piling Engineering, and
 * CIRIA C580; from memory.
 */
public final class RaisedExcavation {
  /** Horizontal run of the plane for one of height. */
  public static final double PLANE = 3;

  private RaisedExcavation() {}

  /**
   * How much the excavation is taken as higher, m.
   *
   * @param height height of the berm at the wall, m, more than zero
   * @param topWidth width of its level top, m, zero or more
   * @param slope horizontal run of its face for one of height, zero or more
   * @throws OutsideRange if a value leaves its range
   */
  public static double by(double height, double topWidth, double slope) {
    if (!(height > 0 && topWidth >= 0 && slope >= 0)) {
      throw new OutsideRange("a berm needs a height, and a width and slope of zero or more");
    }
    double base = topWidth + slope * height;
    return Math.min(base / PLANE, height) / 2;
  }
}
