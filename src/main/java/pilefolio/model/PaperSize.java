package pilefolio.model;

/** Paper of the documents. */
public enum PaperSize implements Choice {
  /** 210 mm by 297 mm. */
  A4("A4"),
  /** 8.5 in by 11 in. */
  LETTER("Letter");

  private final String label;

  PaperSize(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
