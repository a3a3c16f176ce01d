package pilefolio.trace;

import java.util.ArrayList;
import java.util.List;
import pilefolio.trace.Element.Case;
import pilefolio.units.Unit;

/**
 * A table of a calculation sheet: rows are layers, depths or piles; columns are given values or
 * formulas.
 *
 * @param id name by which rows are handed in
 * @param caption words above the table
 * @param label heading of the column that names the rows
 * @param columns the columns
 * @param totals sums and extremes of columns, usable below the table
 */
public record CalcTable(
    String id, String caption, String label, List<Column> columns, List<Total> totals) {

  /** One column. */
  public sealed interface Column {
    /** Symbol of the column. */
    String symbol();

    /** Unit declared. */
    Unit unit();

    /** What it is. */
    String meaning();
  }

  /** A value handed in for each row. */
  public record GivenColumn(String symbol, Unit unit, String meaning) implements Column {}

  /** The value of another column in the row above; in the first row a symbol of the sheet. */
  public record CarriedColumn(String symbol, Unit unit, String meaning, String from, String first)
      implements Column {}

  /** A formula of the row. */
  public record LineColumn(
      String symbol, Unit unit, String meaning, Formula formula, Reference reference)
      implements Column {}

  /** A piecewise formula of the row. */
  public record ChooseColumn(
      String symbol, Unit unit, String meaning, Reference reference, List<Case> cases)
      implements Column {}

  /** How a total is made. */
  public enum Kind {
    /** Sum of the column. */
    SUM("Σ"),
    /** Greatest value of the column. */
    LARGEST("max"),
    /** Least value of the column. */
    SMALLEST("min");

    private final String sign;

    Kind(String sign) {
      this.sign = sign;
    }

    /** The sign as printed. */
    public String sign() {
      return sign;
    }
  }

  /**
   * A total of a column.
   *
   * @param symbol symbol of the total
   * @param kind how it is made
   * @param column symbol of the column
   * @param unit unit of the column
   * @param meaning what it is
   */
  public record Total(String symbol, Kind kind, String column, Unit unit, String meaning) {}

  /** An empty table. */
  public static CalcTable of(String id, String caption, String label) {
    return new CalcTable(id, caption, label, List.of(), List.of());
  }

  /** Adds a column of given values. */
  public CalcTable given(String symbol, Unit unit, String meaning) {
    return plus(new GivenColumn(FormulaParser.symbol(symbol), unit, meaning));
  }

  /**
   * Adds a column that repeats a column of the row above.
   *
   * @param symbol symbol of the new column
   * @param unit unit of both
   * @param meaning what it is
   * @param from symbol of the column repeated, declared before or after this one
   * @param first symbol of the sheet that stands in the first row
   */
  public CalcTable carried(String symbol, Unit unit, String meaning, String from, String first) {
    return plus(
        new CarriedColumn(
            FormulaParser.symbol(symbol),
            unit,
            meaning,
            FormulaParser.symbol(from),
            FormulaParser.symbol(first)));
  }

  /** Adds a formula column written as {@code "σ'_v = σ_v − u"}. */
  public CalcTable line(String equation, Unit unit, String meaning, Reference reference) {
    Equation split = Equation.of(equation);
    return plus(new LineColumn(split.symbol(), unit, meaning, split.formula(), reference));
  }

  /** Adds a piecewise column; see {@link Choice}. */
  public CalcTable choose(
      String symbol, Unit unit, String meaning, Reference reference, Choice choice) {
    return plus(
        new ChooseColumn(FormulaParser.symbol(symbol), unit, meaning, reference, choice.cases()));
  }

  /** Adds the sum of a column. */
  public CalcTable sum(String symbol, String column, String meaning) {
    return total(symbol, Kind.SUM, column, meaning);
  }

  /** Adds the greatest value of a column. */
  public CalcTable largest(String symbol, String column, String meaning) {
    return total(symbol, Kind.LARGEST, column, meaning);
  }

  /** Adds the least value of a column. */
  public CalcTable smallest(String symbol, String column, String meaning) {
    return total(symbol, Kind.SMALLEST, column, meaning);
  }

  private CalcTable total(String symbol, Kind kind, String column, String meaning) {
    Column of =
        columns.stream()
            .filter(c -> c.symbol().equals(FormulaParser.symbol(column)))
            .findFirst()
            .orElseThrow(
                () -> new FormulaException("table " + id + " has no column \"" + column + "\""));
    List<Total> more = new ArrayList<>(totals);
    more.add(new Total(FormulaParser.symbol(symbol), kind, of.symbol(), of.unit(), meaning));
    return new CalcTable(id, caption, label, columns, List.copyOf(more));
  }

  private CalcTable plus(Column column) {
    if (columns.stream().anyMatch(c -> c.symbol().equals(column.symbol()))) {
      throw new FormulaException(
          "table " + id + " has two columns called \"" + column.symbol() + "\"");
    }
    List<Column> more = new ArrayList<>(columns);
    more.add(column);
    return new CalcTable(id, caption, label, List.copyOf(more), totals);
  }
}
