package pilefolio.trace;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import pilefolio.trace.Expr.Bin;
import pilefolio.trace.Expr.Call;
import pilefolio.trace.Expr.Neg;
import pilefolio.trace.Expr.Num;
import pilefolio.trace.Expr.Pi;
import pilefolio.trace.Expr.Pow;
import pilefolio.trace.Expr.Sym;
import pilefolio.units.Dimension;

/**
 * One formula: its text in the engineer's notation and the tree read from it.
 *
 * @param text as written in the check
 * @param expr the tree
 */
public record Formula(String text, Expr expr) {
  private static final double LAST_BITS = 1e-15;

  /** A formula that a sheet can evaluate many times without looking names up. */
  @FunctionalInterface
  public interface Compiled {
    /** The coherent SI value for the symbols' coherent SI values in the compiled order. */
    double of(double[] values);
  }

  /**
   * Reads a formula.
   *
   * @throws FormulaException if the text is not in the notation
   */
  public static Formula of(String text) {
    return new Formula(text, FormulaParser.expression(text));
  }

  /** The symbols used, in order of appearance. */
  public Set<String> symbols() {
    Set<String> names = new LinkedHashSet<>();
    collect(expr, names);
    return names;
  }

  private static void collect(Expr expr, Set<String> names) {
    if (expr instanceof Sym sym) {
      names.add(sym.name());
    } else if (expr instanceof Neg neg) {
      collect(neg.inner(), names);
    } else if (expr instanceof Bin bin) {
      collect(bin.left(), names);
      collect(bin.right(), names);
    } else if (expr instanceof Pow pow) {
      collect(pow.base(), names);
      collect(pow.exponent(), names);
    } else if (expr instanceof Call call) {
      call.args().forEach(arg -> collect(arg, names));
    }
  }

  /**
   * The coherent SI value.
   *
   * @param value coherent SI value of each symbol
   */
  public double evaluate(ToDoubleFunction<String> value) {
    return evaluate(expr, value);
  }

  private static double evaluate(Expr expr, ToDoubleFunction<String> value) {
    if (expr instanceof Num num) {
      return num.unit().toSi(num.value());
    }
    if (expr instanceof Pi) {
      return Math.PI;
    }
    if (expr instanceof Sym sym) {
      return value.applyAsDouble(sym.name());
    }
    if (expr instanceof Neg neg) {
      return -evaluate(neg.inner(), value);
    }
    if (expr instanceof Bin bin) {
      return Arithmetic.apply(bin.op(), evaluate(bin.left(), value), evaluate(bin.right(), value));
    }
    if (expr instanceof Pow pow) {
      return Math.pow(evaluate(pow.base(), value), evaluate(pow.exponent(), value));
    }
    Call call = (Call) expr;
    double[] args = new double[call.args().size()];
    for (int i = 0; i < args.length; i++) {
      args[i] = evaluate(call.args().get(i), value);
    }
    return Arithmetic.apply(call.fn(), args);
  }

  /** Compiles the formula for sweeps over the named symbols. */
  public Compiled compile(List<String> order) {
    return compile(expr, order);
  }

  private static Compiled compile(Expr expr, List<String> order) {
    if (expr instanceof Num num) {
      double constant = num.unit().toSi(num.value());
      return v -> constant;
    }
    if (expr instanceof Pi) {
      return v -> Math.PI;
    }
    if (expr instanceof Sym sym) {
      int index = order.indexOf(sym.name());
      if (index < 0) {
        throw new FormulaException("symbol " + sym.name() + " is not in " + order);
      }
      return v -> v[index];
    }
    if (expr instanceof Neg neg) {
      Compiled inner = compile(neg.inner(), order);
      return v -> -inner.of(v);
    }
    if (expr instanceof Bin bin) {
      Compiled left = compile(bin.left(), order);
      Compiled right = compile(bin.right(), order);
      return switch (bin.op()) {
        case ADD -> v -> left.of(v) + right.of(v);
        case SUB -> v -> left.of(v) - right.of(v);
        case MUL -> v -> left.of(v) * right.of(v);
        case DIV -> v -> Arithmetic.apply(Expr.Op.DIV, left.of(v), right.of(v));
      };
    }
    if (expr instanceof Pow pow) {
      Compiled base = compile(pow.base(), order);
      Compiled exponent = compile(pow.exponent(), order);
      return v -> Math.pow(base.of(v), exponent.of(v));
    }
    Call call = (Call) expr;
    List<Compiled> args = call.args().stream().map(arg -> compile(arg, order)).toList();
    return v -> {
      double[] values = new double[args.size()];
      for (int i = 0; i < values.length; i++) {
        values[i] = args.get(i).of(v);
      }
      return Arithmetic.apply(call.fn(), values);
    };
  }

  /**
   * The dimension of the value.
   *
   * @param dimensions the dimension of each symbol
   * @throws FormulaException if a symbol is unknown or the dimensions do not fit, with the formula
   */
  public Dimension dimension(Map<String, Dimension> dimensions) {
    try {
      Dimension found = DimensionRule.of(expr, dimensions);
      return found == null ? Dimension.NONE : found;
    } catch (FormulaException | ArithmeticException e) {
      throw new FormulaException("in \"" + text + "\": " + e.getMessage());
    }
  }

  /**
   * How far the value may wander while its symbols do: what a difference of nearly equal numbers
   * makes of the last bits. The numbers written in the formula wander by their last bits too. A
   * jump that only one direction meets, such as that of a whole number, does not count.
   *
   * @param value coherent SI value of each symbol
   * @param move how far each symbol may wander
   */
  public double wander(ToDoubleFunction<String> value, ToDoubleFunction<String> move) {
    Map<String, Double> numbers = new LinkedHashMap<>();
    Expr named = numbersAsSymbols(expr, numbers);
    ToDoubleFunction<String> all =
        name -> numbers.containsKey(name) ? numbers.get(name) : value.applyAsDouble(name);
    double here = evaluate(named, all);
    double sum = 0;
    Set<String> names = new LinkedHashSet<>();
    collect(named, names);
    for (String name : names) {
      double by =
          numbers.containsKey(name) ? LAST_BITS * numbers.get(name) : move.applyAsDouble(name);
      double up = Math.abs(evaluate(named, moved(all, name, by)) - here);
      double down = Math.abs(evaluate(named, moved(all, name, -by)) - here);
      double least = Double.isNaN(up) ? down : Double.isNaN(down) ? up : Math.min(up, down);
      sum += Double.isFinite(least) ? least : 0;
    }
    return sum;
  }

  private static ToDoubleFunction<String> moved(
      ToDoubleFunction<String> value, String moved, double by) {
    return name -> value.applyAsDouble(name) + (name.equals(moved) ? by : 0);
  }

  /** The tree with a name, that no symbol can have, for each number. */
  private static Expr numbersAsSymbols(Expr expr, Map<String, Double> numbers) {
    if (expr instanceof Num num) {
      String name = "#" + numbers.size();
      numbers.put(name, num.unit().toSi(num.value()));
      return new Sym(name);
    }
    if (expr instanceof Neg neg) {
      return new Neg(numbersAsSymbols(neg.inner(), numbers));
    }
    if (expr instanceof Bin bin) {
      Expr left = numbersAsSymbols(bin.left(), numbers);
      return new Bin(bin.op(), left, numbersAsSymbols(bin.right(), numbers));
    }
    if (expr instanceof Pow pow) {
      Expr base = numbersAsSymbols(pow.base(), numbers);
      return new Pow(base, numbersAsSymbols(pow.exponent(), numbers));
    }
    if (expr instanceof Call call) {
      return new Call(
          call.fn(), call.args().stream().map(arg -> numbersAsSymbols(arg, numbers)).toList());
    }
    return expr;
  }

  /** True if the formula is one symbol or one number. */
  public boolean isPlain() {
    return expr instanceof Sym || expr instanceof Num;
  }
}
