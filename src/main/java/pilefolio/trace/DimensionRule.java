package pilefolio.trace;

import java.util.Map;
import pilefolio.trace.Expr.Bin;
import pilefolio.trace.Expr.Call;
import pilefolio.trace.Expr.Neg;
import pilefolio.trace.Expr.Num;
import pilefolio.trace.Expr.Op;
import pilefolio.trace.Expr.Pi;
import pilefolio.trace.Expr.Pow;
import pilefolio.trace.Expr.Sym;
import pilefolio.units.Dimension;

/** Finds the dimension of an expression; null means a bare zero, which fits any. */
final class DimensionRule {
  private DimensionRule() {}

  static Dimension of(Expr expr, Map<String, Dimension> dimensions) {
    if (expr instanceof Num num) {
      return num.isBareZero() ? null : num.unit().dimension();
    }
    if (expr instanceof Pi) {
      return Dimension.NONE;
    }
    if (expr instanceof Sym sym) {
      Dimension dimension = dimensions.get(sym.name());
      if (dimension == null) {
        throw new FormulaException("symbol \"" + sym.name() + "\" is not defined above");
      }
      return dimension;
    }
    if (expr instanceof Neg neg) {
      return of(neg.inner(), dimensions);
    }
    if (expr instanceof Bin bin) {
      Dimension left = of(bin.left(), dimensions);
      Dimension right = of(bin.right(), dimensions);
      if (bin.op() == Op.MUL) {
        return some(left).times(some(right));
      }
      if (bin.op() == Op.DIV) {
        return some(left).over(some(right));
      }
      return same(left, right, "added to or taken from");
    }
    if (expr instanceof Pow pow) {
      Dimension base = some(of(pow.base(), dimensions));
      Dimension exponent = some(of(pow.exponent(), dimensions));
      if (!exponent.isNone()) {
        throw new FormulaException("an exponent must be a pure number, not " + exponent);
      }
      if (base.isNone()) {
        return Dimension.NONE;
      }
      Double constant = constant(pow.exponent());
      if (constant == null) {
        throw new FormulaException(
            "a value with the dimension " + base + " needs a fixed exponent");
      }
      return base.power(constant);
    }
    Call call = (Call) expr;
    return switch (call.fn()) {
      case SQRT -> some(of(call.args().get(0), dimensions)).power(0.5);
      case ABS -> of(call.args().get(0), dimensions);
      case MIN, MAX -> {
        Dimension all = null;
        for (Expr arg : call.args()) {
          all = same(all, of(arg, dimensions), "compared with");
        }
        yield all;
      }
      default -> {
        Dimension arg = some(of(call.args().get(0), dimensions));
        if (!arg.isNone()) {
          throw new FormulaException(
              call.fn().lower() + " needs a pure number or an angle, not " + arg);
        }
        yield Dimension.NONE;
      }
    };
  }

  static Dimension same(Dimension left, Dimension right, String verb) {
    if (left == null) {
      return right;
    }
    if (right != null && !left.equals(right)) {
      throw new FormulaException(right + " cannot be " + verb + " " + left);
    }
    return left;
  }

  private static Dimension some(Dimension dimension) {
    return dimension == null ? Dimension.NONE : dimension;
  }

  /** The value of an exponent that holds no symbol, or null. */
  static Double constant(Expr expr) {
    if (expr instanceof Num num && num.unit().dimension().isNone()) {
      return num.unit().toSi(num.value());
    }
    if (expr instanceof Neg neg) {
      Double inner = constant(neg.inner());
      return inner == null ? null : -inner;
    }
    if (expr instanceof Bin bin) {
      Double left = constant(bin.left());
      Double right = constant(bin.right());
      return left == null || right == null ? null : Arithmetic.apply(bin.op(), left, right);
    }
    return null;
  }
}
