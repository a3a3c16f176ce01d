package pilefolio.model;

/** How wide the ground is that resists a single pile or beam below the excavation. */
public enum PassiveWidthRule implements Choice {
  /** Three widths of the pile. */
  THREE_WIDTHS("Three widths"),
  /** Its width times an arching factor from the angle of friction. */
  ARCHING("Arching factor"),
  /** Its own width. */
  OWN_WIDTH("Own width");

  private final String label;

  PassiveWidthRule(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
