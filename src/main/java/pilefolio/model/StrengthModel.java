package pilefolio.model;

/** How concrete gains strength in its first days. */
public enum StrengthModel implements Choice {
  /** Exponential form with the cement coefficient s. */
  EN("EN 1992-1-1"),
  /** Hyperbola with the constants a and b. */
  ACI("ACI 209");

  private final String label;

  StrengthModel(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
