package pilefolio.trace;

import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import pilefolio.trace.Shown.Applied;
import pilefolio.trace.Shown.Leaf;
import pilefolio.trace.Shown.Minus;
import pilefolio.trace.Shown.Raised;
import pilefolio.trace.Shown.Two;

/** Writes what is shown as a live spreadsheet formula, with cells in place of the symbols. */
public final class SpreadsheetText {
  private SpreadsheetText() {}

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
      case CEIL -> "ROUNDUP(ROUND(" + args + ",9),0)";
      case FLOOR -> "ROUNDDOWN(ROUND(" + args + ",9),0)";
      default -> applied.fn().name() + "(" + args + ")";
    };
  }
}
