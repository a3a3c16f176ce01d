package pilefolio.model;

/** Where the margin stands on an allowable-stress basis. */
public enum AllowableMargin implements Choice {
  /** Passive resistance is divided by a factor. */
  FACTOR_ON_PASSIVE("Factor on passive"),
  /** The depth of equilibrium is lengthened by a share. */
  EMBEDMENT_INCREASE("Embedment increase");

  private final String label;

  AllowableMargin(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
