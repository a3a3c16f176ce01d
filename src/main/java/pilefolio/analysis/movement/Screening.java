package pilefolio.analysis.movement;

/** First look at a building: movements so small that no further question is asked. */
public final class Screening {
  /** Slope of the ground below which damage is negligible. As quoted by Goh and Mair (2014). */
  public static final double SLOPE = 1.0 / 500;

  /** Settlement below which damage is negligible, m. As quoted by Goh and Mair (2014). */
  public static final double SETTLEMENT = 0.010;

  private Screening() {}

  /** True if slope and settlement, m, are both below the limits. */
  public static boolean negligible(double slope, double settlement) {
    return slope < SLOPE && settlement < SETTLEMENT;
  }
}
