package pilefolio.analysis.apparent;

import pilefolio.analysis.earth.OutsideRange;

/**
 * Rowe's flexibility number ρ = H⁴/(E·I), stated in the units of its charts: H the whole length of
 * the wall in ft, E in psi, I in in⁴ per ft of wall. The same quotient in other units is another
 * number: H in inches shifts log ρ by +4.317.
 */
public final class RoweNumber {
  // 1 m⁴/(MN·m²/m) expressed in ft⁴/(psi·in⁴/ft).
  private static final double FROM_SI = 10.91e-7;

  private RoweNumber() {}

  /** The unit of ρ as documents print it. */
  public static final String UNIT = "ft⁴/(psi·in⁴/ft)";

  /**
   * Decimal logarithm of ρ in {@link #UNIT}.
   *
   * @param length exposed and embedded length of the wall, m
   * @param modulus E, MPa
   * @param inertia I, m⁴ per m
   */
  public static double logRho(double length, double modulus, double inertia) {
    if (!(length > 0 && modulus > 0 && inertia > 0)) {
      throw new OutsideRange("length, modulus and second moment of area must be more than zero");
    }
    return Math.log10(FROM_SI * Math.pow(length, 4) / (modulus * inertia));
  }

  /** Ground beside and below the wall as the reduction asks for it. */
  public enum Ground {
    /** Loose sand. */
    LOOSE_SAND,
    /** Silt or clay. */
    FINE_GRAINED,
    /** Medium dense or dense sand. */
    DENSER_SAND
  }

  /** What may be done with the moment of the free-earth method. */
  public sealed interface Reduction permits None, Unknown {}

  /**
   * The moment must not be reduced.
   *
   * @param reason why
   */
  public record None(String reason) implements Reduction {}

  /**
   * A chart would give a reduction, but its ordinates are not held here; no value is made up.
   *
   * @param reason why
   */
  public record Unknown(String reason) implements Reduction {}

  /** What may be done in some ground. */
  public static Reduction reduction(Ground ground) {
    return switch (ground) {
      case LOOSE_SAND ->
          new None("no reduction of the free-earth moment in loose sand (UFC 3-220-20)");
      case FINE_GRAINED ->
          new None("no reduction of the free-earth moment in fine-grained soil (UFC 3-220-20)");
      case DENSER_SAND ->
          new Unknown(
              "the reduction in denser sand is read from Rowe's chart by log ρ in "
                  + UNIT
                  + "; the ordinates of the chart are not held here, so the moment is not reduced");
    };
  }
}
