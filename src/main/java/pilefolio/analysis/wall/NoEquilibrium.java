package pilefolio.analysis.wall;

/**
 * No depth gives equilibrium; a physical answer, not an error.
 *
 * @param cause the kind of reason
 * @param reason the reason in a sentence with numbers
 */
public record NoEquilibrium(Cause cause, String reason) implements WallOutcome {

  /** Why no depth gives equilibrium. */
  public enum Cause {
    /** Undrained ground below the excavation is too weak for the stress behind at that level. */
    UNDRAINED_GROUND_TOO_WEAK,
    /** The ground profile ends before equilibrium is reached. */
    PROFILE_ENDS,
    /** Resistance does not catch up with load within the depth searched. */
    RESISTANCE_TOO_SMALL,
    /** The ground above the support turns the wall about it. */
    SUPPORT_TOO_LOW,
    /** The support does not lie on the wall above the excavation. */
    SUPPORT_OFF_WALL,
    /** The support would have to pull the wall into the excavation. */
    SUPPORT_UNLOADED
  }
}
