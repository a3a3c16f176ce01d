package pilefolio.model;

/** Strength class of the cement, which decides the coefficient s of EN 1992-1-1. */
public enum CementClass implements Choice {
  /** Rapid, s = 0.20. */
  R("R"),
  /** Normal, s = 0.25. */
  N("N"),
  /** Slow, s = 0.38. */
  S("S");

  private final String label;

  CementClass(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
