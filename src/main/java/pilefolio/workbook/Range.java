package pilefolio.workbook;

import pilefolio.units.NumberText;
import pilefolio.units.Unit;

/**
 * Limits of a number, both ends included, in coherent SI units.
 *
 * @param low least value; may be minus infinity
 * @param high greatest value; may be infinity
 */
public record Range(double low, double high) {
  /** No limits. */
  public static final Range ANY = new Range(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

  /** Values converted from feet and pounds carry noise in the last bits. */
  private static final double NOISE = 1e-9;

  /** Limits given in a unit. */
  static Range of(Unit unit, double low, double high) {
    return new Range(
        Double.isInfinite(low) ? low : unit.toSi(low),
        Double.isInfinite(high) ? high : unit.toSi(high));
  }

  /** True if the value lies within the limits. */
  public boolean contains(double si) {
    return si >= low - NOISE * Math.abs(low) && si <= high + NOISE * Math.abs(high);
  }

  /** True if there is a limit at all. */
  public boolean isLimited() {
    return !Double.isInfinite(low) || !Double.isInfinite(high);
  }

  /** In words and in a unit, such as {@code 8 to 28 kN/m³}. */
  public String text(Unit unit) {
    String symbol = spaced(unit);
    if (Double.isInfinite(high)) {
      return number(low, unit) + symbol + " or more";
    }
    if (Double.isInfinite(low)) {
      return number(high, unit) + symbol + " or less";
    }
    return number(low, unit) + " to " + number(high, unit) + symbol;
  }

  /** The unit as it follows a number: the degree sign without a space, a plain number nothing. */
  static String spaced(Unit unit) {
    return switch (unit.symbol()) {
      case "", "1" -> "";
      case "°" -> "°";
      default -> " " + unit.symbol();
    };
  }

  private static String number(double si, Unit unit) {
    return NumberText.significant(unit.fromSi(si), 3);
  }
}
