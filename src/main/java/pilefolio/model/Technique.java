package pilefolio.model;

/** How a pile is bored. */
public enum Technique implements Choice {
  /** Continuous flight auger with hollow stem, concrete pumped through the stem. */
  UNCASED_AUGER("Uncased auger"),
  /** Continuous flight auger inside a casing turned by a second head. */
  CASED_AUGER("Cased auger"),
  /** Hole drilled, beam set, hole filled. */
  PREDRILLED("Predrilled"),
  /** Pressed in statically, reacting on piles already in. */
  PRESSED_IN("Pressed in");

  private final String label;

  Technique(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
