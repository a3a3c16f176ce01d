package pilefolio.analysis.staged;

/**
 * A support in one stage, per metre of wall and horizontal. The same id in a later stage is the
 * same support.
 *
 * @param id mark
 * @param level level, m
 * @param stiffness horizontal stiffness, kN/m per m of wall, zero or more
 * @param lockOff horizontal force with which it is placed, kN/m, zero or more; another value in a
 *     later stage means that it is stressed anew to that force
 * @param action whether it can hold the wall in one direction or in both
 */
public record ElasticSupport(
    String id, double level, double stiffness, double lockOff, Action action) {

  /** Directions in which a support can act. */
  public enum Action {
    /** It pushes the wall back toward the ground and never the other way: strut, anchor, raker. */
    ONE_WAY,
    /** It holds both ways: a slab cast against the wall and tied to it. */
    BOTH_WAYS
  }

  /**
   * @throws IllegalArgumentException if stiffness or force is negative or not a finite number
   */
  public ElasticSupport {
    if (!(stiffness >= 0 && lockOff >= 0)
        || Double.isInfinite(stiffness)
        || Double.isInfinite(lockOff)) {
      throw new IllegalArgumentException(
          "support " + id + ": stiffness and lock-off force must be zero or more");
    }
  }

  /**
   * A support of a row at equal spacing, inclined to the horizontal in the vertical plane square to
   * the wall.
   *
   * @param id mark
   * @param level level, m
   * @param axialStiffness stiffness along one support, EA/L, kN/m
   * @param inclinationRad angle to the horizontal, rad, less than π/2
   * @param spacing distance between supports along the wall, m
   * @param axialLockOff force along one support when it is placed, kN
   * @param action directions
   */
  public static ElasticSupport inclined(
      String id,
      double level,
      double axialStiffness,
      double inclinationRad,
      double spacing,
      double axialLockOff,
      Action action) {
    if (!(spacing > 0 && Math.abs(inclinationRad) < Math.PI / 2)) {
      throw new IllegalArgumentException(
          "support "
              + id
              + ": spacing must be more than zero and the inclination below 90 degrees");
    }
    double cos = Math.cos(inclinationRad);
    return new ElasticSupport(
        id, level, axialStiffness * cos * cos / spacing, axialLockOff * cos / spacing, action);
  }
}
