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
 * @param distance from the wall, a length
 * @param foundation level of its foundation or invert, an elevation
 * @param settlementLimit settlement its owner allows, a length
 * @param vibrationLimit peak particle velocity its owner allows, length per time
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
    String note) {}
