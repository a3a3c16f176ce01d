package pilefolio.analysis.sequence;

/**
 * Ages of a primary pile between which its concrete stands by itself and can still be cut, in real
 * days in the ground.
 *
 * @param from first age, days
 * @param to last age, days; infinite if the cutting limit is never reached
 */
public record StrengthWindow(double from, double to) {

  /**
   * Checks the ages.
   *
   * @throws IllegalArgumentException if an age is not a number or the first is negative
   */
  public StrengthWindow {
    if (!(from >= 0) || Double.isNaN(to)) {
      throw new IllegalArgumentException("window from " + from + " to " + to + " days");
    }
  }

  /**
   * Window of a mix at a ground temperature. The retarding time is a real time, as seen in a trial
   * mix at site temperature; hardening starts after it.
   *
   * @param gain growth of strength
   * @param strength28 mean strength at 28 days, MPa
   * @param standing strength the primary needs to stand, MPa
   * @param cutting strength the tool can still cut, MPa
   * @param maturity effect of temperature
   * @param temperature temperature of the concrete in the ground, °C
   * @param retardHours retarding time, h, zero or more
   * @return the window; empty (from above to) if the limits are the wrong way round
   * @throws IllegalArgumentException if a strength lies outside a measured curve or the concrete
   *     does not harden at this temperature
   */
  public static StrengthWindow of(
      StrengthGain gain,
      double strength28,
      double standing,
      double cutting,
      Maturity maturity,
      double temperature,
      double retardHours) {
    double speed = maturity.factor(temperature);
    if (!(speed > 0)) {
      throw new IllegalArgumentException("the concrete does not harden at " + temperature + " °C");
    }
    double dormant = retardHours / 24;
    return new StrengthWindow(
        dormant + gain.ageOf(standing / strength28) / speed,
        dormant + gain.ageOf(cutting / strength28) / speed);
  }

  /**
   * Mean strength of a primary at a real age.
   *
   * @param gain growth of strength
   * @param strength28 mean strength at 28 days, MPa
   * @param maturity effect of temperature
   * @param temperature temperature of the concrete in the ground, °C
   * @param retardHours retarding time, h
   * @param age real age, days
   * @return strength, MPa
   */
  public static double strengthAt(
      StrengthGain gain,
      double strength28,
      Maturity maturity,
      double temperature,
      double retardHours,
      double age) {
    double hardened = Math.max(0, age - retardHours / 24) * maturity.factor(temperature);
    return strength28 * gain.at(hardened);
  }

  /**
   * Whether an age known to within a spread lies inside for certain.
   *
   * @param age age, days
   * @param spread the age may be this much less or more, days
   * @return whether the whole range lies inside
   */
  public boolean holds(double age, double spread) {
    return age - spread >= from && age + spread <= to;
  }
}
