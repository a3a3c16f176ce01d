package pilefolio.units;

/**
 * Physical dimension as exponents of length, mass, time and temperature.
 *
 * <p>Exponents are counted in twelfths, so that square, cube and fourth roots stay exact. Angles
 * and ratios are dimensionless.
 *
 * @param length exponent of length, in twelfths
 * @param mass exponent of mass, in twelfths
 * @param time exponent of time, in twelfths
 * @param temperature exponent of temperature, in twelfths
 */
public record Dimension(int length, int mass, int time, int temperature) {
  private static final int ONE_POWER = 12;

  /** A pure number, a ratio or an angle. */
  public static final Dimension NONE = new Dimension(0, 0, 0, 0);

  /** Length. */
  public static final Dimension LENGTH = new Dimension(ONE_POWER, 0, 0, 0);

  /** Mass. */
  public static final Dimension MASS = new Dimension(0, ONE_POWER, 0, 0);

  /** Time. */
  public static final Dimension TIME = new Dimension(0, 0, ONE_POWER, 0);

  /** Temperature, counted in degrees from 0 °C. */
  public static final Dimension TEMPERATURE = new Dimension(0, 0, 0, ONE_POWER);

  /** Force. */
  public static final Dimension FORCE = new Dimension(ONE_POWER, ONE_POWER, -2 * ONE_POWER, 0);

  /** The dimension of a product. */
  public Dimension times(Dimension other) {
    return new Dimension(
        length + other.length,
        mass + other.mass,
        time + other.time,
        temperature + other.temperature);
  }

  /** The dimension of a quotient. */
  public Dimension over(Dimension other) {
    return times(other.power(-1));
  }

  /**
   * The dimension raised to a power.
   *
   * @param exponent any exponent that keeps every exponent a whole number of twelfths
   * @throws ArithmeticException if the result cannot be held exactly
   */
  public Dimension power(double exponent) {
    return new Dimension(
        scaled(length, exponent),
        scaled(mass, exponent),
        scaled(time, exponent),
        scaled(temperature, exponent));
  }

  private static int scaled(int twelfths, double exponent) {
    double exact = twelfths * exponent;
    long rounded = Math.round(exact);
    if (Math.abs(exact - rounded) > 1e-9) {
      throw new ArithmeticException("power " + exponent + " does not keep the dimension exact");
    }
    return (int) rounded;
  }

  /** True for a pure number, a ratio or an angle. */
  public boolean isNone() {
    return equals(NONE);
  }

  @Override
  public String toString() {
    StringBuilder text = new StringBuilder();
    append(text, "length", length);
    append(text, "mass", mass);
    append(text, "time", time);
    append(text, "temperature", temperature);
    return text.isEmpty() ? "a pure number" : text.toString();
  }

  private static void append(StringBuilder text, String name, int twelfths) {
    if (twelfths == 0) {
      return;
    }
    if (!text.isEmpty()) {
      text.append('·');
    }
    text.append(name);
    if (twelfths != ONE_POWER) {
      text.append('^');
      text.append(
          twelfths % ONE_POWER == 0
              ? String.valueOf(twelfths / ONE_POWER)
              : twelfths + "/" + ONE_POWER);
    }
  }
}
