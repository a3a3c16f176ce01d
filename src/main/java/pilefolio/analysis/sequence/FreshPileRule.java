package pilefolio.analysis.sequence;

/**
 * Distance kept from a pile whose concrete is fresh. A pile closer than k diameters (or a least
 * distance) may start only after the waiting time.
 *
 * @param diameters k, in diameters of the fresh pile, centre to centre, zero or more
 * @param leastDistance least distance whatever the diameter, m, zero or more
 * @param hours waiting time, h, zero or more
 */
public record FreshPileRule(double diameters, double leastDistance, double hours) {

  /** 6 diameters, EN 12699 cl. 8.5.1 (cast-in-place displacement piles), one day. */
  public static final FreshPileRule DISPLACEMENT_SIX = new FreshPileRule(6, 0, 24);

  /** 3 diameters, one day: contractor's practice for continuous flight augers in sand. */
  public static final FreshPileRule PRACTICE_THREE = new FreshPileRule(3, 0, 24);

  /**
   * Checks the rule.
   *
   * @throws IllegalArgumentException if a value is negative
   */
  public FreshPileRule {
    if (!(diameters >= 0) || !(leastDistance >= 0) || !(hours >= 0)) {
      throw new IllegalArgumentException("distance and waiting time cannot be negative");
    }
  }

  /**
   * Distance inside which a fresh pile blocks a new one.
   *
   * @param diameter diameter of the fresh pile, m
   * @return the distance, m
   */
  public double distance(double diameter) {
    return Math.max(diameters * diameter, leastDistance);
  }

  /**
   * Whole days that must lie between the days of two close piles. The rule is counted in days: a
   * pile made the day before counts as 24 hours old, whatever the hour.
   *
   * @return the days; zero if there is nothing to wait for
   */
  public int waitingDays() {
    return (int) Math.ceil(hours / 24 - 1e-9);
  }

  /**
   * Primaries to pass over: every m-th primary may be made in one shift.
   *
   * @param diameter diameter of the primaries, m
   * @param spacing spacing of primary and secondary, m
   * @return m, one or more
   */
  public int everyNthPrimary(double diameter, double spacing) {
    return Math.max(1, (int) Math.ceil(distance(diameter) / (2 * spacing) - 1e-9));
  }
}
