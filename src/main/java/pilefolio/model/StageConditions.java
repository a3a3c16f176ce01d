package pilefolio.model;

import java.util.Optional;

/**
 * What else is true of a stage.
 *
 * @param longTerm true if undrained layers act with their drained strength
 * @param earthquake true if the seismic coefficients act
 * @param berm ground left standing against the wall in front
 */
public record StageConditions(boolean longTerm, boolean earthquake, Optional<Berm> berm) {
  /** Short term, no earthquake. */
  public static final StageConditions USUAL = new StageConditions(false, false);

  /** Without a berm. */
  public StageConditions(boolean longTerm, boolean earthquake) {
    this(longTerm, earthquake, Optional.empty());
  }
}
