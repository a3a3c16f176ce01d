package pilefolio.trace;

import java.util.stream.Collectors;
import pilefolio.trace.Expr.Op;
import pilefolio.trace.Shown.Applied;
import pilefolio.trace.Shown.Leaf;
import pilefolio.trace.Shown.Minus;
import pilefolio.trace.Shown.Raised;
import pilefolio.trace.Shown.Two;

/** Writes what is shown as one line of text, brackets only where they are needed. */
final class PlainText {
  private static final int SUM = 1;
  private static final int PRODUCT = 2;
  private static final int SIGN = 3;
  private static final int POWER = 4;
  private static final int ATOM = 5;

  private PlainText() {}

  static String of(Shown shown) {
    if (shown instanceof Leaf leaf) {
      return leaf.text() + spaced(leaf.unit());
    }
    if (shown instanceof Minus minus) {
      return "−" + unsigned(bracketed(minus.inner(), SIGN));
    }
    if (shown instanceof Two two) {
      int strength = strength(two);
      boolean strict = two.op() == Op.SUB || two.op() == Op.DIV;
      String sign = two.op() == Op.DIV ? "/" : " " + two.op().sign() + " ";
      return bracketed(two.left(), strength)
          + sign
          + unsigned(bracketed(two.right(), strict ? strength + 1 : strength));
    }
    if (shown instanceof Raised raised) {
      return bracketed(raised.base(), ATOM) + "^" + bracketed(raised.exponent(), ATOM);
    }
    Applied applied = (Applied) shown;
    return applied.fn().lower()
        + "("
        + applied.args().stream().map(PlainText::of).collect(Collectors.joining("; "))
        + ")";
  }

  static String spaced(String unit) {
    return unit.isEmpty() || unit.equals("°") ? unit : " " + unit;
  }

  /** No two signs in a row. */
  private static String unsigned(String text) {
    return text.startsWith("−") ? "(" + text + ")" : text;
  }

  private static String bracketed(Shown shown, int least) {
    String text = of(shown);
    return strength(shown) < least ? "(" + text + ")" : text;
  }

  /** How strongly the parts hold together; a weaker part inside a stronger one needs brackets. */
  static int strength(Shown shown) {
    if (shown instanceof Two two) {
      return two.op() == Op.ADD || two.op() == Op.SUB ? SUM : PRODUCT;
    }
    if (shown instanceof Minus) {
      return SIGN;
    }
    if (shown instanceof Raised) {
      return POWER;
    }
    if (shown instanceof Leaf leaf) {
      if (leaf.value() < 0 && !leaf.text().equals(leaf.symbol())) {
        return SUM;
      }
      return leaf.unit().isEmpty() ? ATOM : POWER;
    }
    return ATOM;
  }
}
