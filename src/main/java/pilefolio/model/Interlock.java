package pilefolio.model;

/** Kind of secant wall by the strength of its primaries. */
public enum Interlock implements Choice {
  /** Primaries of a weak mix, such as cement-bentonite. */
  HARD_SOFT("Hard/soft"),
  /** Primaries of retarded low-strength concrete. */
  HARD_FIRM("Hard/firm"),
  /** Primaries of structural concrete. */
  HARD_HARD("Hard/hard");

  private final String label;

  Interlock(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
