package pilefolio.model;

/** How the at-rest coefficient follows from friction angle and overconsolidation. */
public enum AtRestRule implements Choice {
  /** (1 − sin φ')·OCR^sin φ'. */
  POWER("OCR to the power of sin φ'"),
  /** (1 − sin φ')·√OCR·(1 + sin β) for ground that rises at β. */
  SQUARE_ROOT("Square root of OCR");

  private final String label;

  AtRestRule(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
