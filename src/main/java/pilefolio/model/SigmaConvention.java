package pilefolio.model;

/** What share of piles a tolerance stands for. */
public enum SigmaConvention implements Choice {
  /** 95 % of piles within the tolerance on each axis: sigma = tolerance/1.96. */
  TWO_SIDED_95("95 % on one axis"),
  /** The tolerance is two standard deviations. */
  TWO_SIGMA("Two sigma"),
  /** 95 % of piles within a circle of that radius: sigma = tolerance/2.4477. */
  RADIAL_95("95 % radial");

  private final String label;

  SigmaConvention(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
