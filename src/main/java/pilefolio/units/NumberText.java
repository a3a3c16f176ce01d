package pilefolio.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Numbers as documents print them: plain decimals, a real minus sign, rounded half up.
 *
 * <p>A double is first cut to 12 significant digits, so that 0.285 (held as 0.28499999…) rounds as
 * a person rounds it.
 */
public final class NumberText {
  /** Significant digits of a result unless more are needed. */
  public static final int USUAL_DIGITS = 4;

  private static final MathContext TWELVE = new MathContext(12, RoundingMode.HALF_UP);
  private static final int SHORT_EXACT = 6;

  private NumberText() {}

  /** The number with a fixed count of decimals. */
  public static String fixed(double value, int decimals) {
    return text(exact(value).setScale(decimals, RoundingMode.HALF_UP));
  }

  /**
   * The number with the given significant digits; a short exact number is printed as it is, and the
   * digits before the point are never rounded away.
   */
  public static String significant(double value, int digits) {
    BigDecimal exact = exact(value);
    if (exact.signum() == 0) {
      return "0";
    }
    BigDecimal trimmed = exact.stripTrailingZeros();
    if (isShort(trimmed) || (trimmed.precision() <= digits && trimmed.scale() <= digits + 4)) {
      return text(trimmed.scale() < 0 ? trimmed.setScale(0) : trimmed);
    }
    // Noise far below what matters prints as 0, not as a row of zeros with four digits.
    int decimals = Math.min(decimals(value, digits), digits + 4);
    BigDecimal rounded = exact.setScale(decimals, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : text(rounded);
  }

  private static boolean isShort(BigDecimal trimmed) {
    return trimmed.precision() <= SHORT_EXACT && trimmed.scale() <= 3;
  }

  /** Decimals that show the given significant digits without rounding whole digits away. */
  public static int decimals(double value, int digits) {
    if (value == 0 || !Double.isFinite(value)) {
      return 0;
    }
    BigDecimal exact = exact(value);
    int whole = exact.precision() - exact.scale();
    return Math.max(0, digits - whole);
  }

  /** A converting factor: as many decimals as ten significant digits need. */
  public static String factor(double value) {
    BigDecimal cut = exact(value).round(new MathContext(10, RoundingMode.HALF_UP));
    BigDecimal trimmed = cut.stripTrailingZeros();
    return text(trimmed.scale() < 0 ? trimmed.setScale(0) : trimmed);
  }

  /** The usual four significant digits. */
  public static String usual(double value) {
    return significant(value, USUAL_DIGITS);
  }

  /** The value of a printed number. */
  public static double parse(String text) {
    return Double.parseDouble(text.replace('−', '-'));
  }

  private static BigDecimal exact(double value) {
    if (!Double.isFinite(value)) {
      throw new ArithmeticException("cannot print " + value);
    }
    return new BigDecimal(value).round(TWELVE);
  }

  private static String text(BigDecimal value) {
    BigDecimal shown = value.signum() == 0 ? value.abs() : value;
    return shown.toPlainString().replace('-', '−');
  }
}
