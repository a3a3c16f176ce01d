package pilefolio.model;

/** Which of the two kinds of a secant wall a pile is. */
public enum PileKind implements Choice {
  /** Drilled first and cut by its neighbours. */
  PRIMARY("Primary"),
  /** Drilled between two primaries and cut into them. */
  SECONDARY("Secondary"),
  /** Pile or beam of a wall without primaries. */
  SINGLE("Single");

  private final String label;

  PileKind(String label) {
    this.label = label;
  }

  /** The two kinds of a secant wall. */
  public static java.util.List<PileKind> secant() {
    return java.util.List.of(PRIMARY, SECONDARY);
  }

  @Override
  public String label() {
    return label;
  }
}
