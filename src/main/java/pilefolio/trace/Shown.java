package pilefolio.trace;

import java.util.List;
import pilefolio.trace.Expr.Fn;
import pilefolio.trace.Expr.Op;

/**
 * An expression as it stands on paper: symbols or printed numbers, with the factors that convert
 * units written out.
 *
 * <p>Numbers count in the unit printed beside them; a sine takes and an arcsine gives degrees, as
 * on a pocket calculator.
 */
public sealed interface Shown {

  /**
   * A symbol or a number.
   *
   * @param text the symbol, or the number as printed
   * @param unit unit printed after it, or empty
   * @param value the number printed; the exact value for a symbol
   * @param symbol the symbol it stands for, or empty for a number written in the formula
   */
  record Leaf(String text, String unit, double value, String symbol) implements Shown {}

  /** A negated term. */
  record Minus(Shown inner) implements Shown {}

  /** A sum, difference, product or quotient. */
  record Two(Op op, Shown left, Shown right) implements Shown {}

  /** A power. */
  record Raised(Shown base, Shown exponent) implements Shown {}

  /** A function. */
  record Applied(Fn fn, List<Shown> args) implements Shown {}

  /** The number that a pocket calculator set to degrees gives. */
  static double evaluate(Shown shown) {
    if (shown instanceof Leaf leaf) {
      return leaf.value();
    }
    if (shown instanceof Minus minus) {
      return -evaluate(minus.inner());
    }
    if (shown instanceof Two two) {
      return Arithmetic.apply(two.op(), evaluate(two.left()), evaluate(two.right()));
    }
    if (shown instanceof Raised raised) {
      return Math.pow(evaluate(raised.base()), evaluate(raised.exponent()));
    }
    Applied applied = (Applied) shown;
    double[] args = applied.args().stream().mapToDouble(Shown::evaluate).toArray();
    if (applied.fn().takesAngle()) {
      args[0] = Math.toRadians(args[0]);
    }
    double value = Arithmetic.apply(applied.fn(), args);
    return applied.fn().givesAngle() ? Math.toDegrees(value) : value;
  }
}
