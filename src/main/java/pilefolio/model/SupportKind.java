package pilefolio.model;

/** Kind of support. */
public enum SupportKind implements Choice {
  /** Prop or slab in compression. */
  PROP("Prop"),
  /** Ground anchor in tension. */
  ANCHOR("Anchor");

  private final String label;

  SupportKind(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
