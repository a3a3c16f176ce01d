package pilefolio.model;

/** What a strut stands against at its other end. */
public enum FarEnd implements Choice {
  /** A wall that is loaded likewise: the middle of the strut stays where it is. */
  WALL("Opposite wall"),
  /** Something that does not move. */
  FIRM("Firm");

  private final String label;

  FarEnd(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }

  /** Ends of the strut that yield. */
  public int yielding() {
    return this == WALL ? 2 : 1;
  }
}
