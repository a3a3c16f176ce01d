package pilefolio.model;

/**
 * Vertical load on one secondary, characteristic values.
 *
 * @param permanent permanent part, a force, downwards positive
 * @param variable variable part, a force
 * @param eccentricity distance of the load from the axis of the beam across the wall, a length;
 *     positive if the load stands towards the excavation
 */
public record AxialLoad(Value permanent, Value variable, Value eccentricity) {
  /** True if there is any load. */
  public boolean isPresent() {
    return permanent.si() != 0 || variable.si() != 0;
  }
}
