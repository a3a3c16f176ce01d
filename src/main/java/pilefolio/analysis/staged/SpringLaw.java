package pilefolio.analysis.staged;

/**
 * Pressure of the ground on one side at one level in one stage, as a function of movement.
 *
 * <p>Earth pressure is max(active, min(passive, atRest + modulus·movement)), where movement is
 * positive into this ground. It is effective pressure in drained ground and total pressure in
 * undrained ground. Limits may be infinite. The at-rest pressure may lie outside the limits; it is
 * then never reached.
 *
 * @param atRest earth pressure without movement, kPa
 * @param active least earth pressure, kPa
 * @param passive greatest earth pressure, kPa; never taken less than the active one
 * @param modulus modulus of subgrade reaction, kPa per m of movement, zero or more
 * @param water water pressure on the wall, kPa; movement does not change it
 */
public record SpringLaw(
    double atRest, double active, double passive, double modulus, double water) {

  /** No ground and no water. */
  public static final SpringLaw NOTHING = new SpringLaw(0, 0, 0, 0, 0);

  /**
   * @throws IllegalArgumentException if the modulus is negative or a value is not a number
   */
  public SpringLaw {
    if (!(modulus >= 0) || Double.isInfinite(modulus)) {
      throw new IllegalArgumentException("modulus of subgrade reaction must be zero or more");
    }
    if (!Double.isFinite(atRest) || !Double.isFinite(water)) {
      throw new IllegalArgumentException("pressure at rest and water pressure must be numbers");
    }
    if (Double.isNaN(active) || Double.isNaN(passive)) {
      throw new IllegalArgumentException("limits of pressure must be numbers");
    }
    passive = Math.max(passive, active);
  }

  /** A linear spring without limits, from nil pressure. */
  public static SpringLaw linear(double modulus) {
    return new SpringLaw(0, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, modulus, 0);
  }

  /** Earth pressure after a movement into this ground, m, plastic movement taken off, kPa. */
  public double earth(double movement) {
    return Math.max(active, Math.min(passive, atRest + modulus * movement));
  }

  /** The state of the ground after that movement. */
  public SoilState state(double movement) {
    double free = atRest + modulus * movement;
    if (active == 0 && passive == 0) {
      return SoilState.NONE;
    }
    return free <= active
        ? SoilState.ACTIVE
        : free >= passive ? SoilState.PASSIVE : SoilState.ELASTIC;
  }
}
