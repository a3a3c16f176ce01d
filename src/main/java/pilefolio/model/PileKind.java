package pilefolio.model;

/** Which of the two kinds of a secant wall a pile is. */
public enum PileKind implements Choice {
  /** Drilled first and cut by its neighbours. */
  PRIMARY("Primary"),
  /** Drilled between two primaries and cut into them. */
  SECONDARY("Secondary");

  private final String label;

  PileKind(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
