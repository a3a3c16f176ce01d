package pilefolio.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import pilefolio.trace.Condition.Comparison;
import pilefolio.trace.Element.Case;
import pilefolio.trace.Shown.Applied;
import pilefolio.trace.Shown.Leaf;
import pilefolio.trace.Shown.Minus;
import pilefolio.trace.Shown.Raised;
import pilefolio.trace.Shown.Two;
import pilefolio.units.Unit;

/** Writes what is shown as a live spreadsheet formula, with cells in place of the symbols. */
public final class SpreadsheetText {
  private static final String WHOLE = ExpressionText.number(Arithmetic.WHOLE);

  private SpreadsheetText() {}

  /**
   * A formula that gives its value in a unit.
   *
   * @param formula the formula
   * @param unit unit of the cell it stands in
   * @param units unit of the cell of each symbol
   * @param cell address of the cell of each symbol
   */
  public static String of(
      Formula formula, Unit unit, Function<String, Unit> units, UnaryOperator<String> cell) {
    return of(live(formula, unit, units), cell);
  }

  /** A condition that is TRUE or FALSE; every comparison is made in coherent SI. */
  public static String of(
      Condition condition, Function<String, Unit> units, UnaryOperator<String> cell) {
    List<String> parts = new ArrayList<>();
    for (Comparison part : condition.parts()) {
      String sign =
          switch (part.sign()) {
            case AT_MOST -> "<=";
            case AT_LEAST -> ">=";
            case LESS -> "<";
            case MORE -> ">";
          };
      parts.add(of(si(part.left(), units), cell) + sign + of(si(part.right(), units), cell));
    }
    return parts.size() == 1 ? parts.get(0) : "AND(" + String.join(",", parts) + ")";
  }

  /** A piecewise formula that chooses among its cases anew; an error if none applies. */
  public static String of(
      List<Case> cases, Unit unit, Function<String, Unit> units, UnaryOperator<String> cell) {
    String text = "NA()";
    for (int i = cases.size() - 1; i >= 0; i--) {
      Case one = cases.get(i);
      String value = of(one.formula(), unit, units, cell);
      text =
          one.condition() == null
              ? value
              : "IF(" + of(one.condition(), units, cell) + "," + value + "," + text + ")";
    }
    return text;
  }

  private static Shown si(Formula formula, Function<String, Unit> units) {
    return Substitution.inFactor(formula.expr(), symbols(units), 1);
  }

  private static Shown live(Formula formula, Unit unit, Function<String, Unit> units) {
    return Substitution.withNumbers(formula.expr(), symbols(units), unit);
  }

  private static Function<String, Substitution.Entry> symbols(Function<String, Unit> units) {
    return name -> new Substitution.Entry(new Leaf(name, "", 1, name), units.apply(name));
  }

  /**
   * The formula without the leading equals sign.
   *
   * @param shown the expression with numbers, whose factors convert the cells' units
   * @param cell address of the cell that holds a symbol's value in its printed unit
   */
  public static String of(Shown shown, UnaryOperator<String> cell) {
    if (shown instanceof Leaf leaf) {
      if (!leaf.symbol().isEmpty()) {
        return cell.apply(leaf.symbol());
      }
      return leaf.text().equals("π") ? "PI()" : ExpressionText.number(leaf.value());
    }
    if (shown instanceof Minus minus) {
      // A spreadsheet raises before it negates only if told so: −a^2 needs its brackets.
      return "(-(" + of(minus.inner(), cell) + "))";
    }
    if (shown instanceof Two two) {
      String sign =
          switch (two.op()) {
            case ADD -> "+";
            case SUB -> "-";
            case MUL -> "*";
            case DIV -> "/";
          };
      return "(" + of(two.left(), cell) + sign + of(two.right(), cell) + ")";
    }
    if (shown instanceof Raised raised) {
      return "((" + of(raised.base(), cell) + ")^(" + of(raised.exponent(), cell) + "))";
    }
    Applied applied = (Applied) shown;
    String args =
        applied.args().stream().map(arg -> of(arg, cell)).collect(Collectors.joining(","));
    return switch (applied.fn()) {
      case SIN, COS, TAN -> applied.fn().name() + "(RADIANS(" + args + "))";
      case ASIN, ACOS, ATAN -> "DEGREES(" + applied.fn().name() + "(" + args + "))";
      case CEIL -> "(-INT(-(" + args + "-" + WHOLE + ")))";
      case FLOOR -> "INT(" + args + "+" + WHOLE + ")";
      default -> applied.fn().name() + "(" + args + ")";
    };
  }
}
