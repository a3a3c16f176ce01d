package pilefolio.analysis.sequence;

/**
 * What every order of the piles must keep.
 *
 * @param fresh distance and time to fresh piles
 * @param flankAgeDifference greatest difference in age of the two primaries of a secondary, days
 * @param shiftHours length over which times within a day may vary, h; taken off both ends of every
 *     strength window so that it holds whatever the hour; zero counts plain days
 * @param dailyConcrete concrete that can be had in one day, m³; infinite if not limited
 * @param latestDay last day on which a pile may be made, days after the start; {@link #OPEN_END} if
 *     there is none
 */
public record SequenceRules(
    FreshPileRule fresh,
    int flankAgeDifference,
    double shiftHours,
    double dailyConcrete,
    int latestDay) {
  /** No latest day. */
  public static final int OPEN_END = Integer.MAX_VALUE;

  /**
   * Checks the limits.
   *
   * @throws IllegalArgumentException if a limit is negative
   */
  public SequenceRules {
    if (flankAgeDifference < 0 || !(shiftHours >= 0) || !(dailyConcrete > 0) || latestDay < 0) {
      throw new IllegalArgumentException("a limit of the sequence cannot be negative");
    }
  }

  SequenceRules withFresh(FreshPileRule other) {
    return new SequenceRules(other, flankAgeDifference, shiftHours, dailyConcrete, latestDay);
  }

  SequenceRules withAgeDifference(int days) {
    return new SequenceRules(fresh, days, shiftHours, dailyConcrete, latestDay);
  }

  SequenceRules withDailyConcrete(double volume) {
    return new SequenceRules(fresh, flankAgeDifference, shiftHours, volume, latestDay);
  }

  SequenceRules withLatestDay(int day) {
    return new SequenceRules(fresh, flankAgeDifference, shiftHours, dailyConcrete, day);
  }
}
