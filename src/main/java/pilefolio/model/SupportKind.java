package pilefolio.model;

/** Kind of support. */
public enum SupportKind implements Choice {
  /** Prop or slab in compression. */
  PROP("Prop"),
  /** Floor slab or blinding in compression. */
  SLAB("Slab"),
  /** Inclined prop down to a footing in the excavation. */
  RAKER("Raker"),
  /** Tie back to a buried block or wall. */
  DEADMAN("Deadman"),
  /** Ground anchor in tension. */
  ANCHOR("Anchor");

  private final String label;

  SupportKind(String label) {
    this.label = label;
  }

  /** True if it is usually inclined. */
  public boolean inclined() {
    return this == ANCHOR || this == RAKER;
  }

  /** True if it can only pull. */
  public boolean pulls() {
    return this == ANCHOR || this == DEADMAN;
  }

  @Override
  public String label() {
    return label;
  }
}
