package pilefolio.standards;

/**
 * A set of factors that is run as a whole.
 *
 * @param id short name, such as {@code DA1-2}
 * @param title what it combines
 */
public record Combination(String id, String title) {}
