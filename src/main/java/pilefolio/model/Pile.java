package pilefolio.model;

/**
 * One pile as it is set out.
 *
 * @param mark such as {@code A-P07} or {@code A-S07}
 * @param run id of its run
 * @param kind primary or secondary
 * @param number counted along the run from 1, each kind for itself
 * @param place counted along the run from 0, both kinds together
 * @param east easting of the centre at platform level, m
 * @param north northing of the centre at platform level, m
 * @param distance along the run from its first pile, m
 */
public record Pile(
    String mark,
    String run,
    PileKind kind,
    int number,
    int place,
    double east,
    double north,
    double distance) {

  /** True for a primary. */
  public boolean primary() {
    return kind == PileKind.PRIMARY;
  }

  /** Distance of the centres of two piles in plan, m. */
  public double distanceTo(Pile other) {
    return Math.hypot(east - other.east, north - other.north);
  }
}
