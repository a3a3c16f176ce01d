package pilefolio.model;

import java.util.Optional;

/**
 * How settlement of the ground follows from the displacement of the wall.
 *
 * @param shape shape over the distance from the wall
 * @param ratio greatest settlement over greatest displacement of the wall
 */
public record SettlementForecast(Optional<SettlementShape> shape, Value ratio) {}
