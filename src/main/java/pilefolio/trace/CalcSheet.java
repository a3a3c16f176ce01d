package pilefolio.trace;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pilefolio.trace.CalcTable.CarriedColumn;
import pilefolio.trace.CalcTable.ChooseColumn;
import pilefolio.trace.CalcTable.Column;
import pilefolio.trace.CalcTable.LineColumn;
import pilefolio.trace.CalcTable.Total;
import pilefolio.trace.Element.Case;
import pilefolio.trace.Element.ChooseElement;
import pilefolio.trace.Element.FoundElement;
import pilefolio.trace.Element.GivenElement;
import pilefolio.trace.Element.LineElement;
import pilefolio.trace.Element.NoteElement;
import pilefolio.trace.Element.RequireElement;
import pilefolio.trace.Element.TableElement;
import pilefolio.units.Dimension;
import pilefolio.units.Unit;

/**
 * A calculation sheet: the page a checker reads and the calculation the engine makes, in one text.
 *
 * <p>Sheets are immutable; each method returns a sheet with one more element. Symbols, dimensions
 * and names are checked on the spot, so that a slip fails when the class loads.
 */
public final class CalcSheet {
  private final String title;
  private final List<Element> elements;
  private final Map<String, Unit> symbols;

  private CalcSheet(String title, List<Element> elements, Map<String, Unit> symbols) {
    this.title = title;
    this.elements = elements;
    this.symbols = symbols;
  }

  /** A sheet without elements. */
  public static CalcSheet named(String title) {
    return new CalcSheet(title, List.of(), Map.of());
  }

  /** The same sheet under another title. */
  public CalcSheet retitled(String other) {
    return new CalcSheet(other, elements, symbols);
  }

  /** Title of the sheet. */
  public String title() {
    return title;
  }

  /** The elements in order. */
  public List<Element> elements() {
    return elements;
  }

  /** The symbols of the sheet (not of table rows) with their declared units, in order. */
  public Map<String, Unit> symbols() {
    return symbols;
  }

  /** Adds a value that is handed in. */
  public CalcSheet given(String symbol, Unit unit, String meaning) {
    String name = FormulaParser.symbol(symbol);
    return plus(new GivenElement(name, unit, meaning), Map.of(name, unit));
  }

  /**
   * Adds a result of a numerical method.
   *
   * @param method what the method is, as documents print it
   */
  public CalcSheet found(String symbol, Unit unit, String meaning, String method) {
    String name = FormulaParser.symbol(symbol);
    return plus(new FoundElement(name, unit, meaning, method), Map.of(name, unit));
  }

  /** Adds a formula written as {@code "c_0 = (D_p + D_s)/2 − s"}. */
  public CalcSheet line(String equation, Unit unit, String meaning, Reference reference) {
    Equation split = Equation.of(equation);
    checkDimension(split.symbol(), split.formula(), unit, dimensions(symbols));
    return plus(
        new LineElement(split.symbol(), split.formula(), unit, meaning, reference),
        Map.of(split.symbol(), unit));
  }

  /** Adds a piecewise formula; see {@link Choice}. */
  public CalcSheet choose(
      String symbol, Unit unit, String meaning, Reference reference, Choice choice) {
    String name = FormulaParser.symbol(symbol);
    checkCases(name, choice.cases(), unit, dimensions(symbols));
    return plus(
        new ChooseElement(name, unit, meaning, reference, choice.cases()), Map.of(name, unit));
  }

  /** Adds a table; its totals become symbols of the sheet. */
  public CalcSheet table(CalcTable table) {
    Map<String, Unit> row = new LinkedHashMap<>(symbols);
    for (Column column : table.columns()) {
      if (symbols.containsKey(column.symbol())) {
        throw new FormulaException(
            "sheet \"" + title + "\": symbol \"" + column.symbol() + "\" is used twice");
      }
      Map<String, Dimension> dimensions = dimensions(row);
      if (column instanceof LineColumn line) {
        checkDimension(line.symbol(), line.formula(), line.unit(), dimensions);
      } else if (column instanceof ChooseColumn choose) {
        checkCases(choose.symbol(), choose.cases(), choose.unit(), dimensions);
      } else if (column instanceof CarriedColumn carried) {
        checkCarried(table, carried);
      }
      row.put(column.symbol(), column.unit());
    }
    Map<String, Unit> totals = new LinkedHashMap<>();
    for (Total total : table.totals()) {
      if (totals.put(total.symbol(), total.unit()) != null || row.containsKey(total.symbol())) {
        throw new FormulaException(
            "sheet \"" + title + "\": symbol \"" + total.symbol() + "\" is used twice");
      }
    }
    return plus(new TableElement(table), totals);
  }

  private void checkCarried(CalcTable table, CarriedColumn carried) {
    Unit from =
        table.columns().stream()
            .filter(c -> c.symbol().equals(carried.from()))
            .map(Column::unit)
            .findFirst()
            .orElse(null);
    Unit first = symbols.get(carried.first());
    if (from == null || first == null || !from.fits(carried.unit()) || !first.fits(from)) {
      throw new FormulaException(
          "sheet \""
              + title
              + "\": column \""
              + carried.symbol()
              + "\" needs a column \""
              + carried.from()
              + "\" and a symbol \""
              + carried.first()
              + "\" of its own dimension");
    }
  }

  /**
   * Adds a requirement written as one comparison, {@code "M_Ed ≤ M_Rd"}. For ≤ and &lt; the left
   * side is the demand, for ≥ and &gt; the right side.
   */
  public CalcSheet require(String condition, String meaning, Reference reference) {
    return require(condition, meaning, reference, true);
  }

  /**
   * Adds a requirement that holds or not and whose ratio says nothing of a reserve: equilibrium, an
   * order of levels, an entered value that may equal its limit.
   */
  public CalcSheet condition(String condition, String meaning, Reference reference) {
    return require(condition, meaning, reference, false);
  }

  private CalcSheet require(String condition, String meaning, Reference reference, boolean ratio) {
    Condition parsed = Condition.of(condition);
    if (parsed.parts().size() != 1) {
      throw new FormulaException("in \"" + condition + "\": a requirement is one comparison");
    }
    parsed.checkDimensions(dimensions(symbols));
    return plus(new RequireElement(parsed, meaning, reference, ratio), Map.of());
  }

  /** Adds a sentence. */
  public CalcSheet note(String text) {
    return plus(new NoteElement(text), Map.of());
  }

  /** Starts handing in values. */
  public Binding bind() {
    return new Binding(this);
  }

  /** Given and found symbols, and table columns, that nothing uses: each is a mistake. */
  public Set<String> unused() {
    Set<String> open = new LinkedHashSet<>();
    Set<String> used = new LinkedHashSet<>();
    for (Element element : elements) {
      if (element instanceof GivenElement given) {
        open.add(given.symbol());
      } else if (element instanceof FoundElement found) {
        open.add(found.symbol());
      } else if (element instanceof LineElement line) {
        used.addAll(line.formula().symbols());
      } else if (element instanceof ChooseElement choose) {
        addCases(choose.cases(), used);
      } else if (element instanceof RequireElement require) {
        used.addAll(require.condition().symbols());
      } else if (element instanceof TableElement table) {
        for (Column column : table.table().columns()) {
          if (column instanceof LineColumn line) {
            used.addAll(line.formula().symbols());
          } else if (column instanceof ChooseColumn choose) {
            addCases(choose.cases(), used);
          } else if (column instanceof CarriedColumn carried) {
            used.add(carried.first());
            used.add(carried.from());
          }
        }
        table.table().totals().forEach(total -> used.add(total.column()));
      }
    }
    open.removeAll(used);
    return open;
  }

  private static void addCases(List<Case> cases, Set<String> used) {
    for (Case one : cases) {
      if (one.condition() != null) {
        used.addAll(one.condition().symbols());
      }
      used.addAll(one.formula().symbols());
    }
  }

  private void checkDimension(
      String symbol, Formula formula, Unit unit, Map<String, Dimension> dimensions) {
    Dimension found;
    try {
      found = formula.dimension(dimensions);
    } catch (FormulaException e) {
      throw new FormulaException("sheet \"" + title + "\": " + e.getMessage());
    }
    boolean zero = formula.expr() instanceof Expr.Num num && num.isBareZero();
    if (!zero && !found.equals(unit.dimension())) {
      throw new FormulaException(
          "sheet \""
              + title
              + "\": "
              + symbol
              + " = "
              + formula.text()
              + " has the dimension "
              + found
              + ", but is declared in "
              + unit.symbol()
              + " ("
              + unit.dimension()
              + ")");
    }
  }

  private void checkCases(
      String symbol, List<Case> cases, Unit unit, Map<String, Dimension> dimensions) {
    for (Case one : cases) {
      checkDimension(symbol, one.formula(), unit, dimensions);
      if (one.condition() != null) {
        one.condition().checkDimensions(dimensions);
      }
    }
  }

  private static Map<String, Dimension> dimensions(Map<String, Unit> units) {
    Map<String, Dimension> map = new LinkedHashMap<>();
    units.forEach((name, unit) -> map.put(name, unit.dimension()));
    return map;
  }

  private CalcSheet plus(Element element, Map<String, Unit> names) {
    Map<String, Unit> more = new LinkedHashMap<>(symbols);
    names.forEach(
        (name, unit) -> {
          if (more.put(name, unit) != null) {
            throw new FormulaException(
                "sheet \"" + title + "\": symbol \"" + name + "\" is used twice");
          }
        });
    List<Element> longer = new ArrayList<>(elements);
    longer.add(element);
    return new CalcSheet(title, List.copyOf(longer), java.util.Collections.unmodifiableMap(more));
  }

  @Override
  public String toString() {
    return title;
  }
}
