package pilefolio.analysis.earth;

/**
 * Factors on pressures. Strengths are factored beforehand.
 *
 * @param onPermanent factor on active earth pressure
 * @param onWater factor on water pressure, both sides
 * @param onVariable factor on the effect of variable surcharge
 * @param onPassive factor by which passive pressure is multiplied: equal to {@code onPermanent}
 *     where one source is taken for both sides, otherwise usually 1
 * @param passiveDivisor factor by which passive pressure is divided, more than zero
 * @param divisorOn what the divisor applies to in undrained layers
 * @param width shares of the length of wall on which pressure acts below the excavation
 */
public record PressureFactors(
    double onPermanent,
    double onWater,
    double onVariable,
    double onPassive,
    double passiveDivisor,
    DivisorOn divisorOn,
    ActingWidth width) {

  /** What the divisor on passive pressure applies to in undrained layers. */
  public enum DivisorOn {
    /** The whole passive pressure, σ_v included. */
    WHOLE_PASSIVE,
    /** Only the term with the undrained strength. */
    STRENGTH_TERM
  }

  /** All factors one. */
  public static final PressureFactors NONE =
      new PressureFactors(1, 1, 1, 1, DivisorOn.WHOLE_PASSIVE);

  /** Factors on a wall without gaps; water carries the factor of permanent actions. */
  public PressureFactors(
      double onPermanent,
      double onVariable,
      double onPassive,
      double passiveDivisor,
      DivisorOn divisorOn) {
    this(
        onPermanent,
        onPermanent,
        onVariable,
        onPassive,
        passiveDivisor,
        divisorOn,
        ActingWidth.WHOLE);
  }

  public PressureFactors {
    if (!(onPermanent > 0
        && onWater > 0
        && onVariable >= 0
        && onPassive > 0
        && passiveDivisor > 0)) {
      throw new OutsideRange("factors on pressure must be more than zero");
    }
  }

  /** The same factors with another divisor on passive pressure. */
  public PressureFactors withPassiveDivisor(double divisor) {
    return new PressureFactors(
        onPermanent, onWater, onVariable, onPassive, divisor, divisorOn, width);
  }

  /** The same factors with another factor on water pressure. */
  public PressureFactors withWater(double factor) {
    return new PressureFactors(
        onPermanent, factor, onVariable, onPassive, passiveDivisor, divisorOn, width);
  }

  /** The same factors for single piles below the excavation. */
  public PressureFactors on(ActingWidth other) {
    return new PressureFactors(
        onPermanent, onWater, onVariable, onPassive, passiveDivisor, divisorOn, other);
  }

  /** A divisor on passive pressure and nothing else. */
  public static PressureFactors passiveDividedBy(double divisor) {
    return NONE.withPassiveDivisor(divisor);
  }
}
