package pilefolio.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import pilefolio.trace.Expr.Bin;
import pilefolio.trace.Expr.Call;
import pilefolio.trace.Expr.Fn;
import pilefolio.trace.Expr.Neg;
import pilefolio.trace.Expr.Num;
import pilefolio.trace.Expr.Op;
import pilefolio.trace.Expr.Pi;
import pilefolio.trace.Expr.Pow;
import pilefolio.trace.Expr.Sym;
import pilefolio.units.Unit;
import pilefolio.units.Units;

/**
 * Reader of the engineer's notation.
 *
 * <p>Operators {@code + − · / ^}, {@code ² ³}, brackets, {@code √( )}, functions by name, numbers
 * with a unit in square brackets as {@code 0.65[in/s]}. A symbol is a letter, further letters,
 * digits or primes, and a subscript as {@code σ'_v} or {@code γ_{G,unf}}. There is no implied
 * product.
 */
final class FormulaParser {
  private final String text;
  private int at;

  private FormulaParser(String text) {
    this.text = text;
  }

  static Expr expression(String text) {
    FormulaParser parser = new FormulaParser(text);
    Expr expr = parser.sum();
    parser.skip();
    if (parser.at < text.length()) {
      throw parser.error("an operator");
    }
    return expr;
  }

  /** Reads one symbol that is the whole text. */
  static String symbol(String text) {
    FormulaParser parser = new FormulaParser(text.strip());
    String name = parser.name();
    if (parser.at < parser.text.length()) {
      throw parser.error("the end of a symbol");
    }
    return name;
  }

  private Expr sum() {
    Expr left = product();
    while (true) {
      if (take('+')) {
        left = new Bin(Op.ADD, left, product());
      } else if (take('−') || take('-')) {
        left = new Bin(Op.SUB, left, product());
      } else {
        return left;
      }
    }
  }

  private Expr product() {
    Expr left = signed();
    while (true) {
      if (take('·') || take('*')) {
        left = new Bin(Op.MUL, left, signed());
      } else if (take('/')) {
        left = new Bin(Op.DIV, left, signed());
      } else {
        return left;
      }
    }
  }

  private Expr signed() {
    if (take('−') || take('-')) {
      return new Neg(signed());
    }
    return power();
  }

  private Expr power() {
    Expr base = atom();
    if (take('²')) {
      return new Pow(base, number("2"));
    }
    if (take('³')) {
      return new Pow(base, number("3"));
    }
    if (take('^')) {
      return new Pow(base, take('−') || take('-') ? new Neg(power()) : power());
    }
    return base;
  }

  private Expr atom() {
    skip();
    if (at >= text.length()) {
      throw error("a number, a symbol or a bracket");
    }
    char c = text.charAt(at);
    if (take('(')) {
      Expr inner = sum();
      need(')');
      return inner;
    }
    if (take('√')) {
      need('(');
      Expr inner = sum();
      need(')');
      return new Call(Fn.SQRT, List.of(inner));
    }
    if (Character.isDigit(c)) {
      return literal();
    }
    if (take('π')) {
      return new Pi();
    }
    if (Character.isLetter(c)) {
      String name = name();
      Fn fn = function(name);
      if (fn == null) {
        return new Sym(name);
      }
      need('(');
      List<Expr> args = new ArrayList<>();
      args.add(sum());
      while (take(',') || take(';')) {
        args.add(sum());
      }
      need(')');
      boolean several = fn == Fn.MIN || fn == Fn.MAX;
      if (several == (args.size() < 2)) {
        throw error(several ? "two arguments or more" : "one argument");
      }
      return new Call(fn, List.copyOf(args));
    }
    throw error("a number, a symbol or a bracket");
  }

  private static Fn function(String name) {
    for (Fn fn : Fn.values()) {
      if (fn.name().toLowerCase(Locale.ROOT).equals(name)) {
        return fn;
      }
    }
    return null;
  }

  private Expr literal() {
    int start = at;
    while (at < text.length() && (Character.isDigit(text.charAt(at)) || text.charAt(at) == '.')) {
      at++;
    }
    String digits = text.substring(start, at);
    Unit unit = Units.ONE;
    if (at < text.length() && text.charAt(at) == '[') {
      int end = text.indexOf(']', at);
      if (end < 0) {
        throw error("]");
      }
      unit = Units.of(text.substring(at + 1, end));
      at = end + 1;
    }
    return new Num(Double.parseDouble(digits), digits, unit);
  }

  private static Expr number(String digits) {
    return new Num(Double.parseDouble(digits), digits, Units.ONE);
  }

  private String name() {
    int start = at;
    while (at < text.length() && isNamePart(text.charAt(at))) {
      at++;
    }
    if (at < text.length() && text.charAt(at) == '_') {
      at++;
      if (at < text.length() && text.charAt(at) == '{') {
        int end = text.indexOf('}', at);
        if (end < 0) {
          throw error("}");
        }
        at = end + 1;
      } else {
        while (at < text.length() && isNamePart(text.charAt(at))) {
          at++;
        }
      }
      while (at < text.length() && (text.charAt(at) == '\'' || text.charAt(at) == '′')) {
        at++;
      }
    }
    if (at == start) {
      throw error("a symbol");
    }
    return text.substring(start, at).replace('′', '\'');
  }

  private static boolean isNamePart(char c) {
    return (Character.isLetterOrDigit(c) && c != 'π' && c != '²' && c != '³')
        || c == '\''
        || c == '′';
  }

  private void skip() {
    while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
      at++;
    }
  }

  private boolean take(char c) {
    skip();
    if (at < text.length() && text.charAt(at) == c) {
      at++;
      return true;
    }
    return false;
  }

  private void need(char c) {
    if (!take(c)) {
      throw error("\"" + c + "\"");
    }
  }

  private FormulaException error(String expected) {
    return new FormulaException(
        "in \"" + text + "\" at character " + (at + 1) + ": expected " + expected);
  }
}
