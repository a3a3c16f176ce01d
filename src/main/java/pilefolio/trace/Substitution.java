package pilefolio.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import pilefolio.trace.Expr.Bin;
import pilefolio.trace.Expr.Call;
import pilefolio.trace.Expr.Neg;
import pilefolio.trace.Expr.Num;
import pilefolio.trace.Expr.Op;
import pilefolio.trace.Expr.Pi;
import pilefolio.trace.Expr.Pow;
import pilefolio.trace.Expr.Sym;
import pilefolio.trace.Shown.Applied;
import pilefolio.trace.Shown.Leaf;
import pilefolio.trace.Shown.Minus;
import pilefolio.trace.Shown.Raised;
import pilefolio.trace.Shown.Two;
import pilefolio.units.NumberText;
import pilefolio.units.Unit;
import pilefolio.units.Units;

/**
 * Turns a formula into what is printed for given units: numbers in their own units and, where units
 * do not cancel by themselves, the converting factor written out.
 */
final class Substitution {
  private static final double DEGREE = Math.PI / 180;

  /** How a symbol is shown: a leaf and the unit in which it counts. */
  record Entry(Leaf leaf, Unit unit) {}

  /** A printed part and the coherent SI value of 1 in its printed units. */
  private record Part(Shown shown, double factor) {}

  private final Function<String, Entry> symbols;
  private final boolean numbers;

  private Substitution(Function<String, Entry> symbols, boolean numbers) {
    this.symbols = symbols;
    this.numbers = numbers;
  }

  /** The formula with numbers, giving a value in the unit. */
  static Shown withNumbers(Expr expr, Function<String, Entry> symbols, Unit unit) {
    return inFactor(expr, symbols, unit.factor());
  }

  /** The formula with numbers, giving a value in a unit that counts so many coherent SI units. */
  static Shown inFactor(Expr expr, Function<String, Entry> symbols, double factor) {
    Substitution substitution = new Substitution(symbols, true);
    return substitution.in(substitution.show(expr, factor), factor);
  }

  /** The formula with symbols, as written. */
  static Shown withSymbols(Expr expr) {
    Substitution substitution =
        new Substitution(name -> new Entry(new Leaf(name, "", 0, name), Units.ONE), false);
    return substitution.show(expr, Double.NaN).shown();
  }

  /** A leaf with the printed number. */
  static Entry number(String symbol, double si, Unit unit, int digits) {
    double value = unit.fromSi(si);
    String text = NumberText.significant(value, digits);
    return new Entry(new Leaf(text, unit.symbol(), NumberText.parse(text), symbol), unit);
  }

  /** A leaf with the printed number already chosen. */
  static Entry printed(String symbol, String text, Unit unit) {
    return new Entry(new Leaf(text, unit.symbol(), NumberText.parse(text), symbol), unit);
  }

  /** Values for symbols, all at the same digits. */
  static Function<String, Entry> numbers(
      Map<String, Double> si, Function<String, Unit> units, int digits) {
    return name -> number(name, si.get(name), units.apply(name), digits);
  }

  private Part show(Expr expr, double target) {
    if (expr instanceof Num num) {
      double factor = num.isBareZero() ? (Double.isNaN(target) ? 1 : target) : num.unit().factor();
      return new Part(
          new Leaf(NumberText.significant(num.value(), 12), num.unit().symbol(), num.value(), ""),
          factor);
    }
    if (expr instanceof Pi) {
      return new Part(new Leaf("π", "", Math.PI, ""), 1);
    }
    if (expr instanceof Sym sym) {
      Entry entry = symbols.apply(sym.name());
      return new Part(entry.leaf(), entry.unit().factor());
    }
    if (expr instanceof Neg neg) {
      Part inner = show(neg.inner(), target);
      return new Part(new Minus(inner.shown()), inner.factor());
    }
    if (expr instanceof Bin bin) {
      return bin.op() == Op.ADD || bin.op() == Op.SUB ? sum(bin, target) : product(bin);
    }
    if (expr instanceof Pow pow) {
      return power(pow);
    }
    return call((Call) expr, target);
  }

  private Part sum(Bin bin, double target) {
    double common = target;
    if (Double.isNaN(common)) {
      common = show(firstTerm(bin), Double.NaN).factor();
    }
    Shown left = in(show(bin.left(), common), common);
    Shown right = in(show(bin.right(), common), common);
    return new Part(new Two(bin.op(), left, right), common);
  }

  private static Expr firstTerm(Expr expr) {
    if (expr instanceof Bin bin && (bin.op() == Op.ADD || bin.op() == Op.SUB)) {
      Expr left = firstTerm(bin.left());
      return left instanceof Num num && num.isBareZero() ? firstTerm(bin.right()) : left;
    }
    return expr;
  }

  private Part product(Bin bin) {
    Part left = show(bin.left(), Double.NaN);
    Part right = show(bin.right(), Double.NaN);
    double factor =
        bin.op() == Op.MUL ? left.factor() * right.factor() : left.factor() / right.factor();
    return new Part(new Two(bin.op(), left.shown(), right.shown()), factor);
  }

  private Part power(Pow pow) {
    Double constant = DimensionRule.constant(pow.exponent());
    Part base = show(pow.base(), constant == null ? 1 : Double.NaN);
    Shown exponent = in(show(pow.exponent(), 1), 1);
    if (constant == null) {
      return new Part(new Raised(in(base, 1), exponent), 1);
    }
    return new Part(new Raised(base.shown(), exponent), Math.pow(base.factor(), constant));
  }

  private Part call(Call call, double target) {
    return switch (call.fn()) {
      case SIN, COS, TAN -> new Part(one(call, in(show(call.args().get(0), DEGREE), DEGREE)), 1);
      case ASIN, ACOS, ATAN -> new Part(one(call, in(show(call.args().get(0), 1), 1)), DEGREE);
      case EXP, LN, CEIL, FLOOR -> new Part(one(call, in(show(call.args().get(0), 1), 1)), 1);
      case SQRT -> {
        Part inner = show(call.args().get(0), Double.NaN);
        yield new Part(one(call, inner.shown()), Math.sqrt(inner.factor()));
      }
      case ABS -> {
        Part inner = show(call.args().get(0), target);
        yield new Part(one(call, inner.shown()), inner.factor());
      }
      case MIN, MAX -> {
        double common = target;
        for (int i = 0; Double.isNaN(common) && i < call.args().size(); i++) {
          Expr arg = call.args().get(i);
          if (!(arg instanceof Num num && num.isBareZero())) {
            common = show(arg, Double.NaN).factor();
          }
        }
        List<Shown> args = new ArrayList<>();
        for (Expr arg : call.args()) {
          args.add(in(show(arg, common), common));
        }
        yield new Part(new Applied(call.fn(), List.copyOf(args)), common);
      }
    };
  }

  private static Shown one(Call call, Shown arg) {
    return new Applied(call.fn(), List.of(arg));
  }

  /** Writes the converting factor after a part whose printed units differ from those wanted. */
  private Shown in(Part part, double target) {
    if (!numbers
        || (part.shown() instanceof Leaf leaf && leaf.value() == 0 && leaf.symbol().isEmpty())) {
      return part.shown();
    }
    double ratio = part.factor() / target;
    if (Math.abs(ratio - 1) < 1e-11) {
      return part.shown();
    }
    Leaf pi = new Leaf("π", "", Math.PI, "");
    Leaf halfTurn = new Leaf("180", "", 180, "");
    if (isPlain(ratio)) {
      return scaled(part.shown(), ratio);
    }
    // Degrees that must count as radians, and the other way round.
    if (isPlain(ratio / DEGREE)) {
      return scaled(new Two(Op.DIV, new Two(Op.MUL, part.shown(), pi), halfTurn), ratio / DEGREE);
    }
    if (isPlain(ratio * DEGREE)) {
      return scaled(new Two(Op.DIV, new Two(Op.MUL, part.shown(), halfTurn), pi), ratio * DEGREE);
    }
    return scaled(part.shown(), ratio);
  }

  /** True for 1, 12, 1000 and the like, and for one divided by such a number. */
  private static boolean isPlain(double ratio) {
    double whole = ratio < 1 ? 1 / ratio : ratio;
    return Math.abs(whole - Math.rint(whole)) < 1e-9 * whole;
  }

  private static Shown scaled(Shown shown, double ratio) {
    if (Math.abs(ratio - 1) < 1e-11) {
      return shown;
    }
    // Tenths, hundredths and thousandths read best as decimals, twelfths as a division.
    boolean divide = ratio < 1 && isPlain(ratio) && !isPowerOfTen(1 / ratio);
    String text = NumberText.factor(divide ? 1 / ratio : ratio);
    return new Two(divide ? Op.DIV : Op.MUL, shown, new Leaf(text, "", NumberText.parse(text), ""));
  }

  private static boolean isPowerOfTen(double whole) {
    double power = Math.log10(whole);
    return Math.abs(power - Math.rint(power)) < 1e-9 && power < 7;
  }
}
