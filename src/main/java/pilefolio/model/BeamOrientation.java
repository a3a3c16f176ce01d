package pilefolio.model;

/** How a beam stands in the bore. */
public enum BeamOrientation implements Choice {
  /** Flanges parallel to the wall; bending about the strong axis. */
  STRONG("Strong axis"),
  /** Web parallel to the wall; bending about the weak axis. */
  WEAK("Weak axis");

  private final String label;

  BeamOrientation(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
