package pilefolio.model;

import java.util.Optional;
import pilefolio.findings.CellRef;

/**
 * Something beside the works that must not be harmed.
 *
 * @param at the first cell of the row
 * @param name what it is called
 * @param kind what it is
 * @param run id of the nearest wall run
 * @param distance of the near side from the wall, a length
 * @param foundation level of its foundation or invert, an elevation
 * @param settlementLimit settlement its owner allows, a length
 * @param vibrationLimit peak particle velocity its owner allows, length per time
 * @param form what a building needs to be looked at as a beam
 * @param note anything else
 */
public record Neighbour(
    CellRef at,
    String name,
    NeighbourKind kind,
    String run,
    Value distance,
    Optional<Value> foundation,
    Optional<Value> settlementLimit,
    Optional<Value> vibrationLimit,
    BuildingForm form,
    String note) {

  /** True for a building, which can crack. */
  public boolean building() {
    return kind == NeighbourKind.MASONRY_BUILDING || kind == NeighbourKind.FRAMED_BUILDING;
  }

  /** Distance of the far side from the wall, m; the near side if the extent is not given. */
  public double farSide() {
    return distance.si() + form.extent().map(Value::si).orElse(0.0);
  }
}
