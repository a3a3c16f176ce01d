package pilefolio.trace;

import java.util.function.ToDoubleFunction;
import pilefolio.trace.Expr.Bin;
import pilefolio.trace.Expr.Neg;
import pilefolio.trace.Expr.Op;
import pilefolio.units.NumberText;
import pilefolio.units.Unit;

/**
 * Chooses the decimals of a result: four significant digits, but never finer than the sixth digit
 * of the largest term of a sum, so that what cancels prints as 0.000 and not as noise.
 */
final class ResultText {
  private static final int DIGITS_OF_TERM = 6;

  /** Share of the largest term below which a result is what the terms leave over, not a value. */
  private static final double CANCELLED = 1e-7;

  private ResultText() {}

  /** The text of a value in a unit. */
  static String of(Expr expr, ToDoubleFunction<String> si, double value, Unit unit, int digits) {
    double shown = unit.fromSi(value);
    double largest = largestTerm(expr, si);
    String text = NumberText.significant(shown, digits);
    boolean cancelled = Math.abs(value) < CANCELLED * largest;
    if (!cancelled || unit.offset() != 0) {
      return text;
    }
    int finest = NumberText.decimals(largest / unit.factor(), DIGITS_OF_TERM + digits - 4);
    return decimals(text) > finest ? NumberText.fixed(shown, finest) : text;
  }

  /** Decimals of a printed number. */
  static int decimals(String text) {
    int point = text.indexOf('.');
    return point < 0 ? 0 : text.length() - point - 1;
  }

  private static double largestTerm(Expr expr, ToDoubleFunction<String> si) {
    if (expr instanceof Bin bin && (bin.op() == Op.ADD || bin.op() == Op.SUB)) {
      return Math.max(term(bin.left(), si), term(bin.right(), si));
    }
    return 0;
  }

  private static double term(Expr expr, ToDoubleFunction<String> si) {
    if (expr instanceof Neg neg) {
      return term(neg.inner(), si);
    }
    double nested = largestTerm(expr, si);
    return nested > 0 ? nested : Math.abs(new Formula("", expr).evaluate(si));
  }
}
