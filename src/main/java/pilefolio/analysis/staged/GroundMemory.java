package pilefolio.analysis.staged;

/** What the ground remembers from one stage to the next. */
public enum GroundMemory {
  /**
   * Nothing: pressure follows from the displacement since the beginning and from the stage alone,
   * whatever came between.
   */
  NONE,
  /**
   * Plastic movement: ground that has reached a limit unloads with its modulus from there, so a
   * wall that is pulled back meets the pressure of reloaded ground.
   */
  PLASTIC_MOVEMENT
}
