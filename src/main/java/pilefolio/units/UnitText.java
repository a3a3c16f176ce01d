package pilefolio.units;

import java.util.Map;
import java.util.Optional;

/** Reader of compound unit texts such as {@code kN·m/m} or {@code lb/ft3}. */
final class UnitText {
  private static final String RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹";

  private UnitText() {}

  static Optional<Unit> parse(String text, Map<String, Unit> atoms) {
    Dimension dimension = Dimension.NONE;
    double factor = 1;
    StringBuilder symbol = new StringBuilder();
    boolean divide = false;
    int at = 0;
    while (at <= text.length()) {
      int end = at;
      while (end < text.length() && "·*-/ ".indexOf(text.charAt(end)) < 0) {
        end++;
      }
      String piece = text.substring(at, end);
      Optional<Power> power = power(piece, atoms);
      if (power.isEmpty()) {
        return Optional.empty();
      }
      int exponent = divide ? -power.get().exponent() : power.get().exponent();
      Unit unit = power.get().unit();
      if (unit.offset() != 0) {
        return Optional.empty();
      }
      dimension = dimension.times(unit.dimension().power(exponent));
      factor *= Math.pow(unit.factor(), exponent);
      symbol.append(unit.symbol()).append(raised(power.get().exponent()));
      if (end == text.length()) {
        break;
      }
      boolean slash = text.charAt(end) == '/';
      if (slash && divide) {
        return Optional.empty();
      }
      // After a slash everything that follows is below the line: kN·m/m, J/m·s.
      divide = divide || slash;
      symbol.append(slash ? '/' : '·');
      at = end + 1;
    }
    return Optional.of(Unit.of(symbol.toString(), dimension, tidy(factor)));
  }

  private record Power(Unit unit, int exponent) {}

  private static Optional<Power> power(String piece, Map<String, Unit> atoms) {
    Unit whole = atoms.get(piece);
    if (whole != null) {
      return Optional.of(new Power(whole, 1));
    }
    if (piece.length() < 2) {
      return Optional.empty();
    }
    char last = piece.charAt(piece.length() - 1);
    int exponent = Character.isDigit(last) ? last - '0' : RAISED.indexOf(last);
    String stem = piece.substring(0, piece.length() - 1);
    if (stem.endsWith("^")) {
      stem = stem.substring(0, stem.length() - 1);
    }
    Unit unit = atoms.get(stem);
    return unit == null || exponent < 1 || exponent > 6
        ? Optional.empty()
        : Optional.of(new Power(unit, exponent));
  }

  private static String raised(int exponent) {
    return exponent == 1 ? "" : String.valueOf(RAISED.charAt(exponent));
  }

  /** Decimal factors such as 1e-3² come out of the powers with noise in the last bits. */
  private static double tidy(double factor) {
    return new java.math.BigDecimal(factor).round(new java.math.MathContext(15)).doubleValue();
  }
}
