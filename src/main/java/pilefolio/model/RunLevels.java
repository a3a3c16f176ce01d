package pilefolio.model;

/**
 * Levels of a wall run, all elevations.
 *
 * @param platform level of the working platform
 * @param retained ground level behind the wall
 * @param cutOff level to which the piles are trimmed
 */
public record RunLevels(Value platform, Value retained, Value cutOff) {}
