package pilefolio.model;

/** Kind of steel in an anchor. */
public enum TendonKind implements Choice {
  /** Strands of seven wires. */
  STRAND("Strands", 4.5),
  /** Bars. */
  BAR("Bars", 3.0);

  private final String label;
  private final double leastFreeLength;

  TendonKind(String label, double leastFreeLength) {
    this.label = label;
    this.leastFreeLength = leastFreeLength;
  }

  @Override
  public String label() {
    return label;
  }

  /** Least free length, m, so that slip at the head does not eat the lock-off load. */
  public double leastFreeLength() {
    return leastFreeLength;
  }
}
