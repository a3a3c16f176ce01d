package pilefolio.trace;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import pilefolio.trace.Binding.Row;
import pilefolio.trace.CalcTable.CarriedColumn;
import pilefolio.trace.CalcTable.ChooseColumn;
import pilefolio.trace.CalcTable.Column;
import pilefolio.trace.CalcTable.GivenColumn;
import pilefolio.trace.CalcTable.LineColumn;
import pilefolio.trace.CalcTable.Total;
import pilefolio.trace.Calculation.ChooseEntry;
import pilefolio.trace.Calculation.Entry;
import pilefolio.trace.Calculation.FoundEntry;
import pilefolio.trace.Calculation.GivenEntry;
import pilefolio.trace.Calculation.LineEntry;
import pilefolio.trace.Calculation.NoteEntry;
import pilefolio.trace.Calculation.RequireEntry;
import pilefolio.trace.Calculation.RowValues;
import pilefolio.trace.Calculation.TableEntry;
import pilefolio.trace.Condition.Comparison;
import pilefolio.trace.Condition.Sign;
import pilefolio.trace.Element.Case;
import pilefolio.trace.Element.ChooseElement;
import pilefolio.trace.Element.FoundElement;
import pilefolio.trace.Element.GivenElement;
import pilefolio.trace.Element.LineElement;
import pilefolio.trace.Element.NoteElement;
import pilefolio.trace.Element.RequireElement;
import pilefolio.trace.Element.TableElement;

/** Works through a sheet from top to bottom. */
final class Calculator {
  private final CalcSheet sheet;
  private final Map<String, Given> given;
  private final Map<String, List<Row>> rows;
  private final Map<String, Double> values = new LinkedHashMap<>();
  private final List<Entry> entries = new ArrayList<>();
  private boolean satisfied = true;
  private OptionalDouble utilisation = OptionalDouble.empty();

  private Calculator(CalcSheet sheet, Map<String, Given> given, Map<String, List<Row>> rows) {
    this.sheet = sheet;
    this.given = given;
    this.rows = rows;
  }

  static Calculation calculate(
      CalcSheet sheet, Map<String, Given> given, Map<String, List<Row>> rows) {
    Calculator calculator = new Calculator(sheet, given, rows);
    for (Element element : sheet.elements()) {
      calculator.work(element);
    }
    calculator.checkLeftovers();
    return new Calculation(
        sheet,
        List.copyOf(calculator.entries),
        java.util.Collections.unmodifiableMap(calculator.values),
        Verdict.of(calculator.satisfied, calculator.utilisation));
  }

  private void work(Element element) {
    if (element instanceof GivenElement e) {
      Given value = taken(e.symbol());
      values.put(e.symbol(), value.si());
      entries.add(new GivenEntry(e, value));
    } else if (element instanceof FoundElement e) {
      Given value = taken(e.symbol());
      values.put(e.symbol(), value.si());
      entries.add(new FoundEntry(e, value));
    } else if (element instanceof LineElement e) {
      double value = finite(e.symbol(), e.formula().text(), e.formula().evaluate(lookup(values)));
      values.put(e.symbol(), value);
      entries.add(new LineEntry(e, value));
    } else if (element instanceof ChooseElement e) {
      Case taken = first(e.symbol(), e.cases(), lookup(values));
      double value =
          finite(e.symbol(), taken.formula().text(), taken.formula().evaluate(lookup(values)));
      values.put(e.symbol(), value);
      entries.add(new ChooseEntry(e, taken, value));
    } else if (element instanceof TableElement e) {
      table(e.table());
    } else if (element instanceof RequireElement e) {
      require(e);
    } else if (element instanceof NoteElement e) {
      entries.add(new NoteEntry(e));
    }
  }

  private Given taken(String symbol) {
    Given value = given.get(symbol);
    if (value == null) {
      throw new FormulaException(
          "sheet \"" + sheet.title() + "\": no value handed in for " + symbol);
    }
    finite(symbol, "given", value.si());
    return value;
  }

  private void table(CalcTable table) {
    List<RowValues> done = new ArrayList<>();
    List<Row> handed = rows.getOrDefault(table.id(), List.of());
    if (handed.isEmpty()) {
      throw new FormulaException(
          "sheet \"" + sheet.title() + "\": table " + table.id() + " has no rows");
    }
    for (Row row : handed) {
      done.add(row(table, row, done));
    }
    Map<String, Double> totals = new LinkedHashMap<>();
    for (Total total : table.totals()) {
      double[] column =
          done.stream().mapToDouble(row -> row.values().get(total.column())).toArray();
      double value =
          switch (total.kind()) {
            // Added downwards, as a person does and as the record's text does.
            case SUM -> java.util.Arrays.stream(column).reduce(0, Double::sum);
            case LARGEST -> java.util.Arrays.stream(column).max().orElseThrow();
            case SMALLEST -> java.util.Arrays.stream(column).min().orElseThrow();
          };
      totals.put(total.symbol(), value);
    }
    values.putAll(totals);
    entries.add(new TableEntry(table, List.copyOf(done), totals));
  }

  private RowValues row(CalcTable table, Row row, List<RowValues> above) {
    Map<String, Double> cells = new LinkedHashMap<>();
    Map<String, Source> sources = new LinkedHashMap<>();
    Map<String, Case> taken = new LinkedHashMap<>();
    ToDoubleFunction<String> lookup =
        name -> cells.containsKey(name) ? cells.get(name) : lookup(values).applyAsDouble(name);
    int used = 0;
    for (Column column : table.columns()) {
      String symbol = column.symbol();
      double value;
      if (column instanceof GivenColumn) {
        Given handed = row.values().get(symbol);
        if (handed == null) {
          throw new FormulaException(
              "table " + table.id() + ", row " + row.label() + ": no value for " + symbol);
        }
        used++;
        sources.put(symbol, handed.source());
        value = handed.si();
      } else if (column instanceof CarriedColumn carried) {
        value =
            above.isEmpty()
                ? lookup.applyAsDouble(carried.first())
                : above.get(above.size() - 1).values().get(carried.from());
      } else if (column instanceof LineColumn line) {
        value = line.formula().evaluate(lookup);
      } else {
        ChooseColumn choose = (ChooseColumn) column;
        Case first = first(symbol, choose.cases(), lookup);
        taken.put(symbol, first);
        value = first.formula().evaluate(lookup);
      }
      cells.put(symbol, finite(symbol, "row " + row.label(), value));
    }
    if (used != row.values().size()) {
      throw new FormulaException(
          "table " + table.id() + " does not have every column of " + row.values().keySet());
    }
    return new RowValues(row.label(), cells, sources, taken);
  }

  private Case first(String symbol, List<Case> cases, ToDoubleFunction<String> lookup) {
    for (Case one : cases) {
      if (one.condition() == null || one.condition().holds(lookup)) {
        return one;
      }
    }
    throw new ArithmeticException(
        "sheet \"" + sheet.title() + "\": no case of " + symbol + " applies");
  }

  private void require(RequireElement e) {
    Comparison comparison = e.condition().parts().get(0);
    double left = finite(e.meaning(), "left side", comparison.left().evaluate(lookup(values)));
    double right = finite(e.meaning(), "right side", comparison.right().evaluate(lookup(values)));
    boolean holds = comparison.sign().holds(left, right);
    boolean leftIsDemand = comparison.sign() == Sign.AT_MOST || comparison.sign() == Sign.LESS;
    OptionalDouble ratio =
        e.ratio()
            ? ratio(leftIsDemand ? left : right, leftIsDemand ? right : left, holds)
            : OptionalDouble.empty();
    satisfied &= holds;
    if (ratio.isPresent()) {
      utilisation = OptionalDouble.of(Math.max(utilisation.orElse(0), ratio.getAsDouble()));
    }
    entries.add(new RequireEntry(e, left, right, holds, ratio));
  }

  /** Demand over capacity; infinite without capacity; absent for a demand below zero. */
  private static OptionalDouble ratio(double demand, double capacity, boolean holds) {
    if (capacity > 0) {
      return OptionalDouble.of(Math.max(0, demand) / capacity);
    }
    return holds ? OptionalDouble.empty() : OptionalDouble.of(Double.POSITIVE_INFINITY);
  }

  private ToDoubleFunction<String> lookup(Map<String, Double> from) {
    return name -> {
      Double value = from.get(name);
      if (value == null) {
        throw new FormulaException("sheet \"" + sheet.title() + "\": no value for " + name);
      }
      return value;
    };
  }

  private double finite(String symbol, String what, double value) {
    if (!Double.isFinite(value)) {
      throw new ArithmeticException(
          "sheet \"" + sheet.title() + "\": " + symbol + " (" + what + ") has no finite value");
    }
    return value;
  }

  private void checkLeftovers() {
    for (String symbol : given.keySet()) {
      boolean wanted =
          sheet.elements().stream()
              .anyMatch(
                  e ->
                      (e instanceof GivenElement g && g.symbol().equals(symbol))
                          || (e instanceof FoundElement f && f.symbol().equals(symbol)));
      if (!wanted) {
        throw new FormulaException(
            "sheet \"" + sheet.title() + "\": " + symbol + " is calculated, not handed in");
      }
    }
    for (String table : rows.keySet()) {
      boolean wanted =
          sheet.elements().stream()
              .anyMatch(e -> e instanceof TableElement t && t.table().id().equals(table));
      if (!wanted) {
        throw new FormulaException("sheet \"" + sheet.title() + "\" has no table " + table);
      }
    }
  }
}
