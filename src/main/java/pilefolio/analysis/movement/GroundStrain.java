package pilefolio.analysis.movement;

/** Strain of a building that follows the ground. */
public final class GroundStrain {
  private GroundStrain() {}

  /**
   * Greatest principal tensile strain of horizontal strain with angular distortion: εh/2 +
   * ½√(εh²+β²). After Boscardin and Cording (1989).
   *
   * @param horizontal horizontal strain, tension positive
   * @param distortion angular distortion
   * @return the strain
   */
  public static double principal(double horizontal, double distortion) {
    return horizontal / 2 + Math.hypot(horizontal, distortion) / 2;
  }

  /**
   * Angular distortion or horizontal strain between two places: difference of movement over
   * distance. UFC 3-220-20, Eq. 2-3 and 2-4.
   *
   * @param near movement nearer the wall, m
   * @param far movement farther from the wall, m
   * @param length distance of the two, m, greater than zero
   * @return the ratio, positive if the nearer place moves more
   */
  public static double between(double near, double far, double length) {
    if (!(length > 0)) {
      throw new IllegalArgumentException("two places need a distance");
    }
    return (near - far) / length;
  }
}
