package pilefolio.model;

/** How a wall without support is brought into equilibrium. */
public enum CantileverMethod implements Choice {
  /** Reversal of pressures above the toe, both equilibrium conditions met. */
  FOUR_FORCE("Four forces"),
  /** Moments about the toe with the force below it lumped, then an allowance on depth. */
  SIMPLIFIED("Simplified");

  private final String label;

  CantileverMethod(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
