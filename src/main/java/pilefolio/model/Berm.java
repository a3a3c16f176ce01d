package pilefolio.model;

/**
 * Ground left standing against the wall in a stage.
 *
 * @param height above the excavation, at the wall, a length
 * @param topWidth width of its level top, a length
 * @param slope horizontal run of its face for one of height
 */
public record Berm(Value height, Value topWidth, Value slope) {}
