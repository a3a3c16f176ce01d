package pilefolio.output.pdf;

/** Sheet size of a document. */
public enum Paper {
  /** 210 mm by 297 mm. */
  A4("paper-a4.css", 210, 297),
  /** 8.5 in by 11 in. */
  LETTER("paper-letter.css", 215.9, 279.4);

  private final String stylesheet;
  private final double widthMm;
  private final double heightMm;

  Paper(String stylesheet, double widthMm, double heightMm) {
    this.stylesheet = stylesheet;
    this.widthMm = widthMm;
    this.heightMm = heightMm;
  }

  /** The style sheet that sets the size; read after the document's own. */
  String stylesheet() {
    return stylesheet;
  }

  /** Width upright in mm. */
  public double widthMm() {
    return widthMm;
  }

  /** Height upright in mm. */
  public double heightMm() {
    return heightMm;
  }
}
