package pilefolio.submittal.figure;

import java.util.List;

/**
 * Levels in the bore while the casing or the auger is drawn.
 *
 * @param id name of the figure in the document
 * @param caption one sentence
 * @param volumeTitle title of the horizontal scale with its unit
 * @param levelTitle title of the vertical scale with its unit
 * @param curves level of the concrete, of the shoe or tip, of the water outside; x is the concrete
 *     placed, y the level
 * @param levels levels to name at the edge
 */
public record ConcreteHeadData(
    String id,
    String caption,
    String volumeTitle,
    String levelTitle,
    List<Curve> curves,
    List<Mark> levels) {
  /** Copies the lists. */
  public ConcreteHeadData {
    curves = List.copyOf(curves);
    levels = List.copyOf(levels);
  }
}
