package pilefolio.trace;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import pilefolio.trace.Calculation.ChooseEntry;
import pilefolio.trace.Calculation.Entry;
import pilefolio.trace.Calculation.FoundEntry;
import pilefolio.trace.Calculation.GivenEntry;
import pilefolio.trace.Calculation.LineEntry;
import pilefolio.trace.Calculation.NoteEntry;
import pilefolio.trace.Calculation.RequireEntry;
import pilefolio.trace.Calculation.TableEntry;
import pilefolio.trace.Condition.Comparison;
import pilefolio.trace.Condition.Sign;
import pilefolio.trace.Printed.PrintedGiven;
import pilefolio.trace.Printed.PrintedLine;
import pilefolio.trace.Printed.PrintedNote;
import pilefolio.trace.Printed.PrintedRequire;
import pilefolio.units.DisplaySystem;
import pilefolio.units.NumberText;
import pilefolio.units.Unit;
import pilefolio.units.Units;

/**
 * Prints calculations so that each line can be redone from the numbers printed on it: digits are
 * added to the numbers of a line until they give its result to the last digit.
 */
public final class Printer {
  private static final int MOST_DIGITS = 12;

  private final DisplaySystem system;

  /** A printer for one system of units. */
  public Printer(DisplaySystem system) {
    this.system = system;
  }

  /** Prints a calculation. */
  public Printed print(Calculation calculation) {
    List<Printed.Entry> entries = new ArrayList<>();
    Map<String, Unit> units = new LinkedHashMap<>();
    calculation.sheet().symbols().forEach((name, unit) -> units.put(name, system.of(unit)));
    for (Entry entry : calculation.entries()) {
      entries.add(entry(entry, calculation.values(), units));
    }
    return new Printed(calculation.sheet().title(), List.copyOf(entries), calculation);
  }

  private Printed.Entry entry(Entry entry, Map<String, Double> si, Map<String, Unit> units) {
    if (entry instanceof GivenEntry e) {
      return given(e.element().symbol(), e.given(), e.element().meaning(), units, false);
    }
    if (entry instanceof FoundEntry e) {
      return given(e.element().symbol(), e.given(), e.element().meaning(), units, true);
    }
    if (entry instanceof LineEntry e) {
      return line(
          e.element().symbol(),
          e.element().formula(),
          e.value(),
          e.element().meaning(),
          e.element().reference(),
          null,
          si,
          units);
    }
    if (entry instanceof ChooseEntry e) {
      return line(
          e.element().symbol(),
          e.taken().formula(),
          e.value(),
          e.element().meaning(),
          e.element().reference(),
          e,
          si,
          units);
    }
    if (entry instanceof TableEntry e) {
      return new TablePrinter(system, e, si, units).print();
    }
    if (entry instanceof RequireEntry e) {
      return require(e, si, units);
    }
    return new PrintedNote(((NoteEntry) entry).element().text());
  }

  private static PrintedGiven given(
      String symbol, Given given, String meaning, Map<String, Unit> units, boolean found) {
    Unit unit = units.get(symbol);
    String number = NumberText.usual(unit.fromSi(given.si()));
    return new PrintedGiven(
        symbol,
        Tex.symbol(symbol) + " = " + Tex.value(number, unit.symbol()),
        symbol + " = " + number + PlainText.spaced(unit.symbol()),
        number,
        unit,
        meaning,
        given.source().text(),
        found);
  }

  private static PrintedLine line(
      String symbol,
      Formula formula,
      double value,
      String meaning,
      Reference reference,
      ChooseEntry choice,
      Map<String, Double> si,
      Map<String, Unit> units) {
    Unit unit = units.get(symbol);
    Redone redone = redone(formula.expr(), value, unit, si, units);
    Shown symbols = Substitution.withSymbols(formula.expr());
    boolean constant = formula.symbols().isEmpty();
    String resultPlain = redone.number() + PlainText.spaced(unit.symbol());
    String numbers = PlainText.of(redone.shown());
    String tex = Tex.symbol(symbol);
    String plain = symbol;
    if (!constant) {
      tex += " = " + Tex.of(symbols);
      plain += " = " + PlainText.of(symbols);
    }
    if (!numbers.equals(resultPlain)) {
      tex += " = " + Tex.of(redone.shown());
      plain += " = " + numbers;
    }
    String caseTex = "";
    String casePlain = "";
    if (choice != null && choice.taken().condition() != null) {
      caseTex = conditionTex(choice.taken().condition(), si, units);
      casePlain = conditionPlain(choice.taken().condition(), si, units);
    } else if (choice != null && choice.element().cases().size() > 1) {
      caseTex = "\\mathrm{otherwise}";
      casePlain = "otherwise";
    }
    return new PrintedLine(
        symbol,
        tex,
        plain,
        plain + " = " + resultPlain,
        redone.number(),
        unit,
        meaning,
        reference.margin(),
        caseTex,
        casePlain,
        redone.shown());
  }

  /** A formula with numbers that give the printed result. */
  record Redone(Shown shown, String number) {}

  /** Adds digits until the printed numbers give the printed result. */
  static Redone redone(
      Expr expr, double value, Unit unit, Map<String, Double> si, Map<String, Unit> units) {
    List<Shown> levels = new ArrayList<>();
    List<String> numbers = new ArrayList<>();
    for (int digits = NumberText.USUAL_DIGITS; digits <= 9; digits++) {
      numbers.add(ResultText.of(expr, si::get, value, unit, digits));
    }
    // What differs by its last bits only, such as a lever arm of zero, is printed coarser.
    for (int decimals = ResultText.decimals(numbers.get(0)) - 1; decimals >= 0; decimals--) {
      numbers.add(NumberText.fixed(unit.fromSi(value), decimals));
    }
    for (String number : numbers) {
      for (int digits = NumberText.USUAL_DIGITS; digits <= MOST_DIGITS; digits++) {
        int level = digits - NumberText.USUAL_DIGITS;
        if (level == levels.size()) {
          levels.add(shown(expr, unit, si, units, digits));
        }
        if (gives(levels.get(level), number)) {
          return new Redone(levels.get(level), number);
        }
      }
    }
    throw new FormulaException("no number of digits lets the line be redone: " + expr);
  }

  private static Shown shown(
      Expr expr, Unit unit, Map<String, Double> si, Map<String, Unit> units, int digits) {
    return Substitution.withNumbers(
        expr, name -> Substitution.number(name, si.get(name), units.get(name), digits), unit);
  }

  /** True if the printed numbers give the printed result to its last digit. */
  static boolean gives(Shown shown, String number) {
    double redone = Shown.evaluate(shown);
    if (!Double.isFinite(redone)) {
      return false;
    }
    return NumberText.parse(NumberText.fixed(redone, ResultText.decimals(number)))
        == NumberText.parse(number);
  }

  private static String conditionTex(
      Condition condition, Map<String, Double> si, Map<String, Unit> units) {
    List<String> parts = new ArrayList<>();
    for (Comparison part : condition.parts()) {
      Sides sides = sides(part, si, units);
      parts.add(sides.tex());
    }
    return String.join(",\\; ", parts);
  }

  private static String conditionPlain(
      Condition condition, Map<String, Double> si, Map<String, Unit> units) {
    List<String> parts = new ArrayList<>();
    for (Comparison part : condition.parts()) {
      parts.add(sides(part, si, units).plain());
    }
    return String.join(" and ", parts);
  }

  /** Both sides of a comparison, printed so that they do not contradict it. */
  private record Sides(
      String tex,
      String plain,
      Shown left,
      Shown right,
      String leftNumber,
      String rightNumber,
      Unit unit,
      String sign) {}

  private static Sides sides(
      Comparison comparison, Map<String, Double> si, Map<String, Unit> units) {
    Unit unit = unit(comparison, units);
    double left = comparison.left().evaluate(si::get);
    double right = comparison.right().evaluate(si::get);
    boolean holds = comparison.sign().holds(left, right);
    String leftNumber = "";
    String rightNumber = "";
    for (int digits = NumberText.USUAL_DIGITS; digits <= MOST_DIGITS; digits++) {
      leftNumber = ResultText.of(comparison.left().expr(), si::get, left, unit, digits);
      rightNumber = ResultText.of(comparison.right().expr(), si::get, right, unit, digits);
      boolean printed =
          comparison.sign().holds(NumberText.parse(leftNumber), NumberText.parse(rightNumber));
      if (printed == holds) {
        break;
      }
    }
    Shown leftShown = side(comparison.left(), leftNumber, unit, si, units);
    Shown rightShown = side(comparison.right(), rightNumber, unit, si, units);
    String sign = holds ? comparison.sign().text() : opposite(comparison.sign()).text();
    return new Sides(
        sideTex(comparison.left(), leftShown, leftNumber, unit)
            + " "
            + sign
            + " "
            + sideTex(comparison.right(), rightShown, rightNumber, unit),
        sidePlain(comparison.left(), leftShown, leftNumber, unit)
            + " "
            + sign
            + " "
            + sidePlain(comparison.right(), rightShown, rightNumber, unit),
        leftShown,
        rightShown,
        leftNumber,
        rightNumber,
        unit,
        sign);
  }

  /**
   * A side with numbers that give its printed value; in full where a near tie asks for more digits
   * than the numbers can give.
   */
  private static Shown side(
      Formula formula, String number, Unit unit, Map<String, Double> si, Map<String, Unit> units) {
    for (int digits = NumberText.USUAL_DIGITS; digits < MOST_DIGITS; digits++) {
      Shown shown = shown(formula.expr(), unit, si, units, digits);
      if (gives(shown, number)) {
        return shown;
      }
    }
    return shown(formula.expr(), unit, si, units, MOST_DIGITS);
  }

  /** The unit in which both sides of a requirement are printed. */
  public Unit unit(RequireEntry entry, CalcSheet sheet) {
    Map<String, Unit> units = new LinkedHashMap<>();
    sheet.symbols().forEach((name, unit) -> units.put(name, system.of(unit)));
    return unit(entry.element().condition().parts().get(0), units);
  }

  private static Unit unit(Comparison comparison, Map<String, Unit> units) {
    for (Formula side : List.of(comparison.left(), comparison.right())) {
      if (side.expr() instanceof Expr.Sym sym) {
        return units.get(sym.name());
      }
    }
    Map<String, pilefolio.units.Dimension> dimensions = new LinkedHashMap<>();
    units.forEach((name, unit) -> dimensions.put(name, unit.dimension()));
    pilefolio.units.Dimension wanted = comparison.left().dimension(dimensions);
    for (Formula side : List.of(comparison.left(), comparison.right())) {
      for (String name : side.symbols()) {
        if (units.get(name).dimension().equals(wanted)) {
          return units.get(name);
        }
      }
    }
    for (Formula side : List.of(comparison.left(), comparison.right())) {
      if (side.expr() instanceof Expr.Num num && num.unit().dimension().equals(wanted)) {
        return num.unit();
      }
    }
    if (wanted.isNone()) {
      return Units.ONE;
    }
    throw new FormulaException(
        "give a line of its own to a side of \"" + comparison.left().text() + "\"");
  }

  private static String sideTex(Formula formula, Shown shown, String number, Unit unit) {
    String value = Tex.value(number, unit.symbol());
    if (formula.expr() instanceof Expr.Num) {
      return value;
    }
    String symbols = Tex.of(Substitution.withSymbols(formula.expr()));
    return formula.isPlain()
        ? symbols + " = " + value
        : symbols + " = " + Tex.of(shown) + " = " + value;
  }

  private static String sidePlain(Formula formula, Shown shown, String number, Unit unit) {
    String value = number + PlainText.spaced(unit.symbol());
    if (formula.expr() instanceof Expr.Num) {
      return value;
    }
    String symbols = PlainText.of(Substitution.withSymbols(formula.expr()));
    return formula.isPlain()
        ? symbols + " = " + value
        : symbols + " = " + PlainText.of(shown) + " = " + value;
  }

  private static Sign opposite(Sign sign) {
    return switch (sign) {
      case AT_MOST -> Sign.MORE;
      case AT_LEAST -> Sign.LESS;
      case LESS -> Sign.AT_LEAST;
      case MORE -> Sign.AT_MOST;
    };
  }

  private static PrintedRequire require(
      RequireEntry entry, Map<String, Double> si, Map<String, Unit> units) {
    Sides sides = sides(entry.element().condition().parts().get(0), si, units);
    return new PrintedRequire(
        sides.tex(),
        sides.plain(),
        entry.element().meaning(),
        entry.element().reference().margin(),
        entry.satisfied(),
        utilisation(entry.utilisation(), entry.satisfied()),
        sides.left(),
        sides.right(),
        sides.leftNumber(),
        sides.rightNumber(),
        sides.unit());
  }

  /**
   * A utilisation with two decimals, or more where two would contradict the verdict.
   *
   * @param utilisation demand over capacity
   * @param satisfied whether the requirement holds
   */
  public static String utilisation(OptionalDouble utilisation, boolean satisfied) {
    if (utilisation.isEmpty()) {
      return "";
    }
    double value = utilisation.getAsDouble();
    if (Double.isInfinite(value)) {
      return "no capacity";
    }
    for (int decimals = 2; decimals <= MOST_DIGITS; decimals++) {
      String text = NumberText.fixed(value, decimals);
      if (NumberText.parse(text) <= 1 == satisfied) {
        return text;
      }
    }
    return NumberText.fixed(value, MOST_DIGITS);
  }
}
