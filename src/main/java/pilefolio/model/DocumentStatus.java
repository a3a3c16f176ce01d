package pilefolio.model;

/** What the documents may be used for. */
public enum DocumentStatus implements Choice {
  /** Not for use; the documents carry the word on every page. */
  DRAFT("Draft"),
  /** To be checked by others. */
  FOR_REVIEW("For review"),
  /** To be built from, once signed. */
  FOR_CONSTRUCTION("For construction");

  private final String label;

  DocumentStatus(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
