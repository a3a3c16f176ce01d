package pilefolio.model;

/**
 * What else is true of a stage.
 *
 * @param longTerm true if undrained layers act with their drained strength
 * @param earthquake true if the seismic coefficients act
 */
public record StageConditions(boolean longTerm, boolean earthquake) {
  /** Short term, no earthquake. */
  public static final StageConditions USUAL = new StageConditions(false, false);
}
