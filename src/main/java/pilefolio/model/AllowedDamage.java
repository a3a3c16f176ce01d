package pilefolio.model;

/** The greatest category of damage that is allowed at a building. */
public enum AllowedDamage implements Choice {
  /** Hairline cracks. */
  NEGLIGIBLE("0 Negligible"),
  /** Fine cracks. */
  VERY_SLIGHT("1 Very slight"),
  /** Cracks that are easily filled. */
  SLIGHT("2 Slight"),
  /** Cracks that need repair. */
  MODERATE("3 Moderate");

  private final String label;

  AllowedDamage(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
