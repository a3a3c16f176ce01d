package pilefolio.model;

/** How a waler stands to inclined supports. */
public enum WalerSetting implements Choice {
  /** Its web is level: inclined supports bend it about both axes. */
  LEVEL("Level"),
  /** Its web lies in the direction of the supports. */
  SQUARE("Square to supports");

  private final String label;

  WalerSetting(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
