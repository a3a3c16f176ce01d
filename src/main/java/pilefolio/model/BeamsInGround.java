package pilefolio.model;

import java.util.Optional;

/**
 * How the soldier beams or king piles of a run stand, and what is between them.
 *
 * @param width how wide the ground is that resists one of them
 * @param structuralToe true if structural concrete fills the bore below the excavation, false if
 *     lean mix does
 * @param lagging lagging, if the workbook gives it
 */
public record BeamsInGround(
    PassiveWidthRule width, boolean structuralToe, Optional<Lagging> lagging) {
  /** Three widths, structural concrete, nothing said about lagging. */
  public static final BeamsInGround USUAL =
      new BeamsInGround(PassiveWidthRule.THREE_WIDTHS, true, Optional.empty());
}
