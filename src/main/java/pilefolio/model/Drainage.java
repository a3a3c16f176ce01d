package pilefolio.model;

/** Which strength of a layer governs. */
public enum Drainage implements Choice {
  /** Effective stresses: friction angle and cohesion. */
  DRAINED("Drained"),
  /** Total stresses: undrained shear strength. */
  UNDRAINED("Undrained");

  private final String label;

  Drainage(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
