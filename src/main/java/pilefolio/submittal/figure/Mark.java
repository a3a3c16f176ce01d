package pilefolio.submittal.figure;

/**
 * A value marked on a scale.
 *
 * @param at where
 * @param label text, such as {@code excavation −4.20 m}
 */
public record Mark(double at, String label) {}
