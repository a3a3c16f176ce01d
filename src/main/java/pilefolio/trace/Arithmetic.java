package pilefolio.trace;

import pilefolio.trace.Expr.Fn;
import pilefolio.trace.Expr.Op;

/** What the operators and functions do to plain numbers; angles in radians. */
final class Arithmetic {
  /** A value closer than this to a whole number counts as that number. */
  static final double WHOLE = 1e-9;

  private Arithmetic() {}

  static double apply(Op op, double left, double right) {
    return switch (op) {
      case ADD -> left + right;
      case SUB -> left - right;
      case MUL -> left * right;
      // No infinity that a later min or atan would swallow: the line has no value on any route.
      case DIV -> right == 0 ? Double.NaN : left / right;
    };
  }

  static double apply(Fn fn, double... args) {
    return switch (fn) {
      case SIN -> Math.sin(args[0]);
      case COS -> Math.cos(args[0]);
      case TAN -> Math.tan(args[0]);
      case ASIN -> Math.asin(args[0]);
      case ACOS -> Math.acos(args[0]);
      case ATAN -> Math.atan(args[0]);
      case EXP -> Math.exp(args[0]);
      case LN -> Math.log(args[0]);
      case SQRT -> Math.sqrt(args[0]);
      case ABS -> Math.abs(args[0]);
      // Noise in the last bits must not add a whole truck: 3.0000000000000004 is 3. No zero is −0.
      case CEIL -> Math.ceil(args[0] - WHOLE) + 0.0;
      case FLOOR -> Math.floor(args[0] + WHOLE);
      case MIN -> {
        double least = args[0];
        for (double arg : args) {
          least = Math.min(least, arg);
        }
        yield least;
      }
      case MAX -> {
        double greatest = args[0];
        for (double arg : args) {
          greatest = Math.max(greatest, arg);
        }
        yield greatest;
      }
    };
  }
}
