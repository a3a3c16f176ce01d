package pilefolio.model;

/** What is assumed where active pressure would be tension. */
public enum TensionCrack implements Choice {
  /** No pressure in the crack. */
  DRY("Dry"),
  /** The crack holds water up to ground level. */
  WATER_FILLED("Water-filled"),
  /** Tension is cut off at zero and no crack is considered. */
  NONE("None");

  private final String label;

  TensionCrack(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
