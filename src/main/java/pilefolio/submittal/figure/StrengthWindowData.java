package pilefolio.submittal.figure;

import java.util.List;

/**
 * Strength of the primaries against age, with the window in which their neighbours may be drilled.
 *
 * @param id name of the figure in the document
 * @param caption one sentence
 * @param ageTitle title of the horizontal scale with its unit
 * @param strengthTitle title of the vertical scale with its unit
 * @param growth strength with age, one curve for each mix
 * @param least strength that a neighbour must not cut into before; 0 for none
 * @param leastLabel its label
 * @param greatest strength that the tool can still cut; not above 0 for none
 * @param greatestLabel its label
 * @param window ages between which cutting is allowed; empty or two values
 * @param planned ages at which neighbours are planned to be drilled, with labels
 */
public record StrengthWindowData(
    String id,
    String caption,
    String ageTitle,
    String strengthTitle,
    List<Curve> growth,
    double least,
    String leastLabel,
    double greatest,
    String greatestLabel,
    List<Double> window,
    List<Mark> planned) {
  /** Copies the lists. */
  public StrengthWindowData {
    growth = List.copyOf(growth);
    window = List.copyOf(window);
    planned = List.copyOf(planned);
  }
}
