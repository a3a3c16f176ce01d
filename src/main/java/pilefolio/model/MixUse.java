package pilefolio.model;

/** What a mix is for. */
public enum MixUse implements Choice {
  /** Primaries. */
  PRIMARY("Primary"),
  /** Secondaries. */
  SECONDARY("Secondary"),
  /** Primaries and secondaries. */
  BOTH("Both"),
  /** Guide wall, backfill of empty bores and the like. */
  OTHER("Other");

  private final String label;

  MixUse(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
