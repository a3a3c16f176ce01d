package pilefolio.model;

/** Class of ground by which the usual table of lagging goes. */
public enum LaggingGround implements Choice {
  /** Medium dense to dense sands and gravels, silts above water, stiff clays without fissures. */
  COMPETENT("Competent"),
  /** Loose sands, clayey sands and silts below water, fissured clays. */
  DIFFICULT("Difficult"),
  /** Soft clays, slightly plastic silts and loose clayey sands below water. */
  DANGEROUS("Potentially dangerous");

  private final String label;

  LaggingGround(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
