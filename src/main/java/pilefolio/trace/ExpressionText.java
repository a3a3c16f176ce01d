package pilefolio.trace;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import pilefolio.trace.Expr.Bin;
import pilefolio.trace.Expr.Call;
import pilefolio.trace.Expr.Fn;
import pilefolio.trace.Expr.Neg;
import pilefolio.trace.Expr.Num;
import pilefolio.trace.Expr.Op;
import pilefolio.trace.Expr.Pi;
import pilefolio.trace.Expr.Pow;
import pilefolio.trace.Expr.Sym;

/**
 * Writes a formula as plain ASCII that a general expression parser evaluates: coherent SI numbers,
 * angles in radians, functions sin cos tan asin acos atan exp ln sqrt min max abs ceil floor; min
 * and max of two arguments each. The order of operations is that of the engine, so that the text
 * gives the engine's value to the last bits.
 */
public final class ExpressionText {
  private static final Map<Character, String> GREEK =
      Map.ofEntries(
          Map.entry('α', "alpha"),
          Map.entry('β', "beta"),
          Map.entry('γ', "gamma"),
          Map.entry('δ', "delta"),
          Map.entry('ε', "epsilon"),
          Map.entry('ζ', "zeta"),
          Map.entry('η', "eta"),
          Map.entry('θ', "theta"),
          Map.entry('κ', "kappa"),
          Map.entry('λ', "lambda"),
          Map.entry('μ', "mu"),
          Map.entry('ν', "nu"),
          Map.entry('ξ', "xi"),
          Map.entry('ρ', "rho"),
          Map.entry('σ', "sigma"),
          Map.entry('τ', "tau"),
          Map.entry('φ', "phi"),
          Map.entry('ϕ', "phi"),
          Map.entry('χ', "chi"),
          Map.entry('ψ', "psi"),
          Map.entry('ω', "omega"),
          Map.entry('Δ', "Delta"),
          Map.entry('Σ', "Sum"),
          Map.entry('Φ', "Phi"),
          Map.entry('Ω', "Omega"),
          Map.entry('Γ', "Gamma"),
          Map.entry('Λ', "Lambda"),
          Map.entry('Ψ', "Psi"),
          Map.entry('Θ', "Theta"));

  private ExpressionText() {}

  /** The formula with ASCII names. */
  public static String withNames(Formula formula) {
    return withNames(formula, ExpressionText::name);
  }

  /** The formula with names as chosen for its symbols. */
  public static String withNames(Formula formula, UnaryOperator<String> names) {
    return write(formula.expr(), names);
  }

  /** The formula with coherent SI numbers. */
  public static String withNumbers(Formula formula, ToDoubleFunction<String> si) {
    return write(formula.expr(), name -> number(si.applyAsDouble(name)));
  }

  /** An ASCII name for a symbol: {@code σ'_v} becomes {@code sigma_p_v}. */
  public static String name(String symbol) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < symbol.length(); i++) {
      char c = symbol.charAt(i);
      if (c == '\'' || c == '′') {
        text.append("_p");
      } else if (GREEK.containsKey(c)) {
        text.append(GREEK.get(c));
      } else if (c < 128 && (Character.isLetterOrDigit(c) || c == '_')) {
        text.append(c);
      } else if (c != '{' && c != '}') {
        text.append('_');
      }
    }
    return text.toString();
  }

  /** A double in full, without an exponent; negative numbers in brackets. */
  public static String number(double value) {
    if (value == 0) {
      return "0";
    }
    String text = new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
    return value < 0 ? "(" + text + ")" : text;
  }

  /** The sum of some terms, added from left to right. */
  public static String sum(List<String> terms) {
    return String.join(" + ", terms);
  }

  /** The least or the greatest of some terms, two at a time. */
  public static String extreme(Fn fn, List<String> terms) {
    if (terms.size() == 1) {
      return terms.get(0);
    }
    int half = (terms.size() + 1) / 2;
    return fn.lower()
        + "("
        + extreme(fn, terms.subList(0, half))
        + ", "
        + extreme(fn, terms.subList(half, terms.size()))
        + ")";
  }

  private static String write(Expr expr, Function<String, String> symbol) {
    if (expr instanceof Num num) {
      return number(num.unit().toSi(num.value()));
    }
    if (expr instanceof Pi) {
      return number(Math.PI);
    }
    if (expr instanceof Sym sym) {
      return symbol.apply(sym.name());
    }
    if (expr instanceof Neg neg) {
      return "(-" + grouped(neg.inner(), symbol) + ")";
    }
    if (expr instanceof Bin bin) {
      return bin(bin, symbol);
    }
    if (expr instanceof Pow pow) {
      return "(" + write(pow.base(), symbol) + ")^(" + write(pow.exponent(), symbol) + ")";
    }
    return call((Call) expr, symbol);
  }

  private static String bin(Bin bin, Function<String, String> symbol) {
    boolean sum = isSum(bin);
    // Sums and products run from left to right; any other order needs its brackets.
    String left =
        sum || (bin.left() instanceof Bin inner && !isSum(inner))
            ? write(bin.left(), symbol)
            : grouped(bin.left(), symbol);
    String right =
        sum && bin.right() instanceof Bin inner && !isSum(inner)
            ? write(bin.right(), symbol)
            : grouped(bin.right(), symbol);
    return switch (bin.op()) {
      case ADD -> left + " + " + right;
      case SUB -> left + " - " + right;
      case MUL -> left + "*" + right;
      case DIV -> left + "/" + right;
    };
  }

  private static boolean isSum(Bin bin) {
    return bin.op() == Op.ADD || bin.op() == Op.SUB;
  }

  private static String call(Call call, Function<String, String> symbol) {
    List<String> args = call.args().stream().map(arg -> write(arg, symbol)).toList();
    String whole = number(Arithmetic.WHOLE);
    return switch (call.fn()) {
      case MIN, MAX -> extreme(call.fn(), args);
      case CEIL -> "ceil(" + args.get(0) + " - " + whole + ")";
      case FLOOR -> "floor(" + args.get(0) + " + " + whole + ")";
      default -> call.fn().lower() + "(" + args.get(0) + ")";
    };
  }

  private static String grouped(Expr expr, Function<String, String> symbol) {
    String text = write(expr, symbol);
    return expr instanceof Bin || expr instanceof Pow ? "(" + text + ")" : text;
  }
}
