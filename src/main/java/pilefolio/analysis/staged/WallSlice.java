package pilefolio.analysis.staged;

/**
 * A piece of the wall between two neighbouring nodes.
 *
 * @param upper upper level, m
 * @param lower lower level, m
 * @param behind the retained side
 * @param front the excavated side
 * @param loadForce resultant of direct pressures on the slice, kN/m, positive toward the excavation
 * @param loadMoment their moment about the bottom of the slice, kNm/m
 */
public record WallSlice(
    double upper,
    double lower,
    SideSlice behind,
    SideSlice front,
    double loadForce,
    double loadMoment) {

  /** Resultant of all pressures, kN/m, positive toward the excavation. */
  public double netForce() {
    return behind.force() - front.force() + loadForce;
  }

  /** Moment of all pressures about the bottom of the slice, kNm/m. */
  public double netMoment() {
    return behind.moment() - front.moment() + loadMoment;
  }
}
