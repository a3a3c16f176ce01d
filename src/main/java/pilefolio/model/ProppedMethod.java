package pilefolio.model;

/** How a wall with one level of support is brought into equilibrium. */
public enum ProppedMethod implements Choice {
  /** The toe may turn; moments about the support. */
  FREE_EARTH("Free earth"),
  /** The toe is held; the wall is clamped in the ground. */
  FIXED_EARTH("Fixed earth");

  private final String label;

  ProppedMethod(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
