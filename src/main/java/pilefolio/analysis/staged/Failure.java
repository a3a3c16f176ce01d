package pilefolio.analysis.staged;

/**
 * The numbers of a mechanism.
 *
 * @param pivot level about which the wall turns, m; no meaning for a slide
 * @param driving what drives the movement: moment about the pivot, kNm/m, or force of a slide, kN/m
 * @param resisting the most that can resist it, likewise
 *     <p>Where an equilibrium lies beyond the limit of displacement: the displacement and the
 *     limit, m.
 */
public record Failure(double pivot, double driving, double resisting) {
  /** No mechanism. */
  public static final Failure NONE = new Failure(0, 0, 0);
}
