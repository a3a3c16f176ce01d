package pilefolio.output.pdf.math;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import pilefolio.output.pdf.math.Tex.Kind;

/**
 * Reads formulas in the part of TeX's notation that engineering documents need:
 *
 * <ul>
 *   <li>letters: one alone is a slanted variable, two or more together are one name and upright (a
 *       product always has its dot); Greek letters as characters or by name; numbers
 *   <li>subscript and superscript signs, groups in braces, primes
 *   <li>{@code \frac{}{} \sqrt{} \sqrt[3]{} \bar{}}
 *   <li>{@code \left( \right)} with round, square or curly brackets, a bar, or a dot for none
 *   <li>{@code \sin \cos \tan \cot \arctan \atan \exp \ln \log \min \max}, {@code \operatorname{}}
 *   <li>{@code \mathrm{} \text{}}, and the spaces {@code \, \; \quad}
 *   <li>{@code \cdot \times \le \ge \ne \approx \pm \sum \to} or the characters themselves; a
 *       hyphen is a minus sign and an asterisk a raised dot
 *   <li>{@code \begin{cases} a & b \\ c & d \end{cases}}
 * </ul>
 *
 * Anything else is an error, never dropped.
 */
public final class TexParser {
  private static final Map<String, String> GREEK =
      Map.ofEntries(
          Map.entry("alpha", "α"),
          Map.entry("beta", "β"),
          Map.entry("gamma", "γ"),
          Map.entry("delta", "δ"),
          Map.entry("epsilon", "ε"),
          Map.entry("varepsilon", "ε"),
          Map.entry("zeta", "ζ"),
          Map.entry("eta", "η"),
          Map.entry("theta", "θ"),
          Map.entry("vartheta", "ϑ"),
          Map.entry("kappa", "κ"),
          Map.entry("lambda", "λ"),
          Map.entry("mu", "μ"),
          Map.entry("nu", "ν"),
          Map.entry("xi", "ξ"),
          Map.entry("pi", "π"),
          Map.entry("rho", "ρ"),
          Map.entry("sigma", "σ"),
          Map.entry("tau", "τ"),
          Map.entry("phi", "φ"),
          Map.entry("varphi", "φ"),
          Map.entry("chi", "χ"),
          Map.entry("psi", "ψ"),
          Map.entry("omega", "ω"),
          Map.entry("Gamma", "Γ"),
          Map.entry("Delta", "Δ"),
          Map.entry("Theta", "Θ"),
          Map.entry("Lambda", "Λ"),
          Map.entry("Pi", "Π"),
          Map.entry("Sigma", "Σ"),
          Map.entry("Phi", "Φ"),
          Map.entry("Psi", "Ψ"),
          Map.entry("Omega", "Ω"));

  private static final Map<String, String> SIGNS =
      Map.ofEntries(
          Map.entry("cdot", "·"),
          Map.entry("times", "×"),
          Map.entry("le", "≤"),
          Map.entry("leq", "≤"),
          Map.entry("ge", "≥"),
          Map.entry("geq", "≥"),
          Map.entry("ne", "≠"),
          Map.entry("neq", "≠"),
          Map.entry("approx", "≈"),
          Map.entry("pm", "±"),
          Map.entry("to", "→"),
          Map.entry("sum", "Σ"),
          Map.entry("infty", "∞"),
          Map.entry("circ", "°"),
          Map.entry("prime", "′"),
          Map.entry("lt", "<"),
          Map.entry("gt", ">"));

  private static final Map<String, String> FUNCTIONS =
      Map.ofEntries(
          Map.entry("sin", "sin"),
          Map.entry("cos", "cos"),
          Map.entry("tan", "tan"),
          Map.entry("asin", "arcsin"),
          Map.entry("acos", "arccos"),
          Map.entry("ceil", "ceil"),
          Map.entry("floor", "floor"),
          Map.entry("round", "round"),
          Map.entry("abs", "abs"),
          Map.entry("cot", "cot"),
          Map.entry("arctan", "arctan"),
          Map.entry("atan", "arctan"),
          Map.entry("arcsin", "arcsin"),
          Map.entry("arccos", "arccos"),
          Map.entry("exp", "exp"),
          Map.entry("sinh", "sinh"),
          Map.entry("cosh", "cosh"),
          Map.entry("tanh", "tanh"),
          Map.entry("ln", "ln"),
          Map.entry("log", "log"),
          Map.entry("min", "min"),
          Map.entry("max", "max"));

  private static final Map<Character, Double> SPACES =
      Map.of(',', 3 / 18.0, ':', 4 / 18.0, ';', 5 / 18.0, '!', -3 / 18.0, ' ', 0.25);

  private final String source;
  private int at;

  private TexParser(String source) {
    this.source = source;
  }

  /**
   * Reads a formula.
   *
   * @throws TexSyntaxException when it is outside the notation
   */
  public static Tex parse(String formula) {
    TexParser parser = new TexParser(formula);
    Tex row = parser.row("", false);
    if (parser.at < formula.length()) {
      throw parser.error("closing sign without an opening one");
    }
    return row;
  }

  /**
   * Reads up to a closing brace, a right bracket, an alignment mark or the end.
   *
   * @param until what ends the row: "" the end, "}" a brace, "]" a bracket, "right" the command,
   *     "cell" an alignment mark or the end of the environment
   */
  private Tex.Row row(String until, boolean upright) {
    List<Tex> items = new ArrayList<>();
    while (at < source.length() && !atEnd(until)) {
      char c = source.charAt(at);
      if (Character.isWhitespace(c) || c == '\u200b') {
        at++;
      } else if (c == '_' || c == '^' || c == '\'' || c == '′') {
        Tex base =
            items.isEmpty() || items.get(items.size() - 1) instanceof Tex.Space
                ? new Tex.Row(List.of())
                : items.remove(items.size() - 1);
        items.add(scripts(base, upright));
      } else if (c == '}') {
        throw error("closing brace without an opening one");
      } else {
        items.add(atom(upright));
      }
    }
    return new Tex.Row(items);
  }

  private boolean atEnd(String until) {
    return switch (until) {
      case "}" -> source.charAt(at) == '}';
      case "]" -> source.charAt(at) == ']';
      case "right" -> source.startsWith("\\right", at) && !source.startsWith("\\rightarrow", at);
      case "cell" ->
          source.charAt(at) == '&'
              || source.startsWith("\\\\", at)
              || source.startsWith("\\end", at);
      default -> false;
    };
  }

  private Tex scripts(Tex base, boolean upright) {
    int primes = 0;
    Tex sub = null;
    Tex sup = null;
    while (at < source.length()) {
      char c = source.charAt(at);
      if (c == '\'' || c == '′') {
        primes++;
        at++;
      } else if (c == '_' && sub == null) {
        at++;
        sub = argument(upright);
      } else if (c == '^' && sup == null) {
        at++;
        sup = argument(upright);
      } else if (c == '_' || c == '^') {
        throw error("second script of the same kind");
      } else {
        break;
      }
    }
    return new Tex.Scripts(base, primes, sub, sup);
  }

  private Tex argument(boolean upright) {
    skipSpace();
    if (at >= source.length()) {
      throw error("argument missing");
    }
    if (source.charAt(at) == '{') {
      return group(upright);
    }
    if ("}_^&".indexOf(source.charAt(at)) >= 0) {
      throw error("argument missing");
    }
    return atomOfOne(upright);
  }

  /** One character or command, as TeX takes an argument without braces. */
  private Tex atomOfOne(boolean upright) {
    char c = source.charAt(at);
    if (Character.isDigit(c)) {
      at++;
      return new Tex.Symbol(String.valueOf(c), false, Kind.ORDINARY);
    }
    if (isLetter(c)) {
      at++;
      return letter(String.valueOf(c), upright);
    }
    return atom(upright);
  }

  private Tex.Row group(boolean upright) {
    int start = at;
    at++;
    Tex.Row row = row("}", upright);
    if (at >= source.length()) {
      at = start;
      throw error("brace not closed");
    }
    at++;
    return row;
  }

  private Tex atom(boolean upright) {
    char c = source.charAt(at);
    if (c == '\\') {
      return command(upright);
    }
    if (c == '{') {
      return group(upright);
    }
    if (Character.isDigit(c)) {
      return number();
    }
    if (isLetter(c)) {
      int start = at;
      while (at < source.length() && isLetter(source.charAt(at))) {
        at++;
      }
      int length = at - start;
      if (length == 1 || upright || !hasGreek(start, at)) {
        String run = source.substring(start, at);
        return letter(run, upright || length > 1);
      }
      at = start + 1;
      return letter(source.substring(start, at), false);
    }
    at++;
    return sign(c, upright);
  }

  private Tex sign(char c, boolean upright) {
    return switch (c) {
      case '+', '±' -> new Tex.Symbol(String.valueOf(c), false, Kind.BINARY);
      case '-', '−' -> new Tex.Symbol("−", false, Kind.BINARY);
      case '·', '*' -> new Tex.Symbol("·", false, upright ? Kind.ORDINARY : Kind.BINARY);
      case '×', '÷' -> new Tex.Symbol(String.valueOf(c), false, Kind.BINARY);
      case '=', '<', '>', '≤', '≥', '≠', '≈', '→' ->
          new Tex.Symbol(String.valueOf(c), false, Kind.RELATION);
      case '(', '[' -> new Tex.Symbol(String.valueOf(c), false, Kind.OPEN);
      case ')', ']' -> new Tex.Symbol(String.valueOf(c), false, Kind.CLOSE);
      case ',', ';', ':' -> new Tex.Symbol(String.valueOf(c), false, Kind.PUNCTUATION);
      case '~', '\u00a0', '\u2009', '\u202f' -> new Tex.Space(3 / 18.0);
      case '&', '#', '$', '%' -> {
        if (c == '%') {
          yield new Tex.Symbol("%", false, Kind.ORDINARY);
        }
        at--;
        throw error("sign not known: " + c);
      }
      default -> new Tex.Symbol(String.valueOf(c), false, Kind.ORDINARY);
    };
  }

  private Tex number() {
    int start = at;
    while (at < source.length()
        && (Character.isDigit(source.charAt(at))
            || (source.charAt(at) == '.'
                && at + 1 < source.length()
                && Character.isDigit(source.charAt(at + 1))))) {
      at++;
    }
    return new Tex.Symbol(source.substring(start, at), false, Kind.ORDINARY);
  }

  private static Tex letter(String text, boolean upright) {
    char c = text.charAt(0);
    if (c == 'Σ' && text.length() == 1) {
      return new Tex.Symbol(text, false, Kind.FUNCTION);
    }
    boolean capitalGreek = c >= 'Α' && c <= 'Ω';
    return new Tex.Symbol(text, !upright && !capitalGreek, Kind.ORDINARY);
  }

  private Tex command(boolean upright) {
    int start = at;
    at++;
    if (at >= source.length()) {
      throw error("backslash at the end");
    }
    char first = source.charAt(at);
    if (SPACES.containsKey(first)) {
      at++;
      return new Tex.Space(SPACES.get(first));
    }
    if ("{}%&_#$".indexOf(first) >= 0) {
      at++;
      Kind kind = first == '{' ? Kind.OPEN : first == '}' ? Kind.CLOSE : Kind.ORDINARY;
      return new Tex.Symbol(String.valueOf(first), false, kind);
    }
    int end = at;
    while (end < source.length() && isAsciiLetter(source.charAt(end))) {
      end++;
    }
    String name = source.substring(at, end);
    at = end;
    return switch (name) {
      case "frac", "dfrac", "tfrac" -> new Tex.Fraction(argument(upright), argument(upright));
      case "sqrt" -> root(upright);
      case "left" -> fence(upright);
      case "mathrm", "rm" -> group("\\" + name);
      case "operatorname" -> function(group("\\" + name));
      case "text", "textrm" -> new Tex.Symbol(literal(), false, Kind.ORDINARY);
      case "mathit" -> argument(false);
      case "bar", "overline" -> new Tex.Overline(argument(upright));
      case "quad" -> new Tex.Space(1);
      case "qquad" -> new Tex.Space(2);
      case "displaystyle" -> new Tex.Space(0);
      case "begin" -> cases(upright);
      default -> named(name, start, upright);
    };
  }

  private Tex named(String name, int start, boolean upright) {
    if (FUNCTIONS.containsKey(name)) {
      return new Tex.Symbol(FUNCTIONS.get(name), false, Kind.FUNCTION);
    }
    if (GREEK.containsKey(name)) {
      return letter(GREEK.get(name), upright);
    }
    if (SIGNS.containsKey(name)) {
      String sign = SIGNS.get(name);
      return "Σ".equals(sign)
          ? new Tex.Symbol(sign, false, Kind.FUNCTION)
          : sign(sign.charAt(0), upright);
    }
    at = start;
    throw error("command not known: \\" + name);
  }

  private Tex.Row group(String command) {
    skipSpace();
    if (at >= source.length() || source.charAt(at) != '{') {
      throw error("brace missing after " + command);
    }
    return group(true);
  }

  private static Tex function(Tex.Row set) {
    StringBuilder name = new StringBuilder();
    for (Tex item : set.items()) {
      if (item instanceof Tex.Symbol symbol) {
        name.append(symbol.text());
      }
    }
    return new Tex.Symbol(name.toString(), false, Kind.FUNCTION);
  }

  private String literal() {
    skipSpace();
    if (at >= source.length() || source.charAt(at) != '{') {
      throw error("brace missing after \\text");
    }
    int close = source.indexOf('}', at);
    if (close < 0) {
      throw error("brace not closed");
    }
    String text = source.substring(at + 1, close);
    at = close + 1;
    return text;
  }

  private Tex root(boolean upright) {
    skipSpace();
    Tex index = null;
    if (at < source.length() && source.charAt(at) == '[') {
      at++;
      index = row("]", upright);
      if (at >= source.length()) {
        throw error("index of the root not closed");
      }
      at++;
    }
    return new Tex.Root(index, argument(upright));
  }

  private Tex fence(boolean upright) {
    String open = delimiter();
    Tex body = row("right", upright);
    if (at >= source.length()) {
      throw error("\\left without \\right");
    }
    at += "\\right".length();
    return new Tex.Fence(open, body, delimiter());
  }

  private String delimiter() {
    skipSpace();
    if (at >= source.length()) {
      throw error("bracket missing");
    }
    if (source.charAt(at) == '\\' && at + 1 < source.length()) {
      at++;
    }
    char c = source.charAt(at);
    if ("()[]{}|.".indexOf(c) < 0) {
      throw error("bracket not known: " + c);
    }
    at++;
    return c == '.' ? "" : String.valueOf(c);
  }

  private Tex cases(boolean upright) {
    String name = literal();
    if (!"cases".equals(name)) {
      throw error("environment not known: " + name);
    }
    List<List<Tex>> rows = new ArrayList<>();
    List<Tex> cells = new ArrayList<>();
    while (true) {
      cells.add(row("cell", upright));
      if (at >= source.length()) {
        throw error("environment not closed");
      }
      if (source.charAt(at) == '&') {
        at++;
      } else if (source.startsWith("\\\\", at)) {
        at += 2;
        rows.add(cells);
        cells = new ArrayList<>();
      } else {
        at += "\\end".length();
        literal();
        rows.add(cells);
        return new Tex.Fence("{", new Tex.Table(rows), "");
      }
    }
  }

  private boolean hasGreek(int from, int to) {
    return source.substring(from, to).chars().anyMatch(c -> c >= 0x370 && c <= 0x3ff);
  }

  private void skipSpace() {
    while (at < source.length() && Character.isWhitespace(source.charAt(at))) {
      at++;
    }
  }

  private static boolean isLetter(char c) {
    return Character.isLetter(c);
  }

  private static boolean isAsciiLetter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
  }

  private TexSyntaxException error(String problem) {
    return new TexSyntaxException(problem, Math.min(at, source.length()), source);
  }
}
