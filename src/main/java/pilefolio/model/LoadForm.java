package pilefolio.model;

/** How the pressure of line and point loads behind a wall is found. */
public enum LoadForm implements Choice {
  /** Elastic stress adjusted to measurements, in the ratios m and n of distance and depth. */
  ADJUSTED("Adjusted elastic (m, n)"),
  /** Elastic stress of a half space, doubled for a wall that does not yield. */
  DOUBLED("Elastic doubled");

  private final String label;

  LoadForm(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
