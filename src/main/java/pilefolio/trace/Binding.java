package pilefolio.trace;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The values handed to one calculation of a sheet. */
public final class Binding {
  private final CalcSheet sheet;
  private final Map<String, Given> values = new LinkedHashMap<>();
  private final Map<String, List<Row>> rows = new LinkedHashMap<>();

  Binding(CalcSheet sheet) {
    this.sheet = sheet;
  }

  /**
   * One row of a table.
   *
   * @param label what the row stands for
   * @param values the given columns
   */
  public record Row(String label, Map<String, Given> values) {
    /** A row without values. */
    public static Row of(String label) {
      return new Row(label, Map.of());
    }

    /** Adds a given column's value, coherent SI. */
    public Row set(String symbol, double si, Source source) {
      Map<String, Given> more = new LinkedHashMap<>(values);
      more.put(FormulaParser.symbol(symbol), new Given(si, source));
      return new Row(label, more);
    }

    /** Adds a given column's value. */
    public Row set(String symbol, Given given) {
      return set(symbol, given.si(), given.source());
    }
  }

  /** Hands in a value, coherent SI. */
  public Binding set(String symbol, double si, Source source) {
    return set(symbol, new Given(si, source));
  }

  /** Hands in a value. */
  public Binding set(String symbol, Given given) {
    String name = FormulaParser.symbol(symbol);
    if (!sheet.symbols().containsKey(name)) {
      throw new FormulaException("sheet \"" + sheet.title() + "\" has no symbol " + name);
    }
    if (values.put(name, given) != null) {
      throw new FormulaException("sheet \"" + sheet.title() + "\": " + name + " handed in twice");
    }
    return this;
  }

  /** Hands in the next row of a table. */
  public Binding row(String table, Row row) {
    rows.computeIfAbsent(table, key -> new ArrayList<>()).add(row);
    return this;
  }

  /**
   * Makes the calculation.
   *
   * @throws FormulaException if a value is missing or does not belong (a programming error)
   * @throws ArithmeticException if a line has no finite value; its message names the line
   */
  public Calculation calculate() {
    return Calculator.calculate(sheet, values, rows);
  }
}
