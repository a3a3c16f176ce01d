package pilefolio.trace;

import java.util.stream.Collectors;
import pilefolio.trace.Expr.Fn;
import pilefolio.trace.Expr.Op;
import pilefolio.trace.Shown.Applied;
import pilefolio.trace.Shown.Leaf;
import pilefolio.trace.Shown.Minus;
import pilefolio.trace.Shown.Raised;
import pilefolio.trace.Shown.Two;

/**
 * Writes what is shown in the small TeX dialect of the document layer: fractions, roots, indices.
 */
public final class Tex {
  private Tex() {}

  /** A symbol such as {@code σ'_v}. */
  public static String symbol(String name) {
    int at = name.indexOf('_');
    if (at < 0) {
      return name.replace("'", "′");
    }
    String stem = name.substring(0, at).replace("'", "′");
    String sub = name.substring(at + 1);
    String primes = "";
    while (sub.endsWith("'")) {
      sub = sub.substring(0, sub.length() - 1);
      primes += "′";
    }
    if (sub.startsWith("{")) {
      sub = sub.substring(1, sub.length() - 1);
    }
    return stem + primes + "_{" + sub.replace("'", "′") + "}";
  }

  /** A number or symbol with its unit. */
  public static String value(String text, String unit) {
    if (unit.isEmpty()) {
      return text;
    }
    if (unit.equals("°")) {
      return text + "°";
    }
    // The text face has no superscript six.
    String set = "\\mathrm{" + unit.replace("⁶", "}^{6}\\mathrm{") + "}";
    return text + "\\," + set.replace("\\mathrm{}", "");
  }

  static String of(Shown shown) {
    if (shown instanceof Leaf leaf) {
      return leaf.symbol().equals(leaf.text()) && !leaf.symbol().isEmpty()
          ? symbol(leaf.text())
          : value(leaf.text(), leaf.unit());
    }
    if (shown instanceof Minus minus) {
      return "−" + unsigned(bracketed(minus.inner(), 3));
    }
    if (shown instanceof Two two) {
      if (two.op() == Op.DIV) {
        return "\\frac{" + of(two.left()) + "}{" + of(two.right()) + "}";
      }
      int strength = PlainText.strength(two);
      return bracketed(two.left(), strength)
          + " "
          + two.op().sign()
          + " "
          + unsigned(bracketed(two.right(), two.op() == Op.SUB ? strength + 1 : strength));
    }
    if (shown instanceof Raised raised) {
      boolean fraction = raised.base() instanceof Two;
      String base = of(raised.base());
      boolean plain = PlainText.strength(raised.base()) >= 5 && !fraction;
      return (plain ? base : "\\left(" + base + "\\right)") + "^{" + of(raised.exponent()) + "}";
    }
    Applied applied = (Applied) shown;
    if (applied.fn() == Fn.SQRT) {
      return "\\sqrt{" + of(applied.args().get(0)) + "}";
    }
    if (applied.fn() == Fn.ABS) {
      return "\\left|" + of(applied.args().get(0)) + "\\right|";
    }
    return "\\"
        + applied.fn().lower()
        + "\\left("
        + applied.args().stream().map(Tex::of).collect(Collectors.joining(";\\,"))
        + "\\right)";
  }

  /** No two signs in a row. */
  private static String unsigned(String text) {
    return text.startsWith("−") ? "\\left(" + text + "\\right)" : text;
  }

  private static String bracketed(Shown shown, int least) {
    String text = of(shown);
    boolean fraction = shown instanceof Two two && two.op() == Op.DIV;
    return !fraction && PlainText.strength(shown) < least ? "\\left(" + text + "\\right)" : text;
  }
}
