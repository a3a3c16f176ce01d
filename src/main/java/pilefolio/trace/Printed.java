package pilefolio.trace;

import java.util.List;
import java.util.Map;
import pilefolio.units.Unit;

/**
 * A calculation as documents print it: every text is final, in one display system.
 *
 * @param title title of the sheet
 * @param entries the elements in order
 * @param calculation what was printed
 */
public record Printed(String title, List<Entry> entries, Calculation calculation) {

  /** One printed element. */
  public sealed interface Entry {}

  /**
   * A value handed in.
   *
   * @param symbol its symbol as written in the sheet
   * @param tex symbol, equals sign and value
   * @param plain the same as one line of text
   * @param number the number
   * @param unit the unit printed
   * @param meaning what it is
   * @param source where it comes from; for a numerical method, its name
   * @param found true for the result of a numerical method
   */
  public record PrintedGiven(
      String symbol,
      String tex,
      String plain,
      String number,
      Unit unit,
      String meaning,
      String source,
      boolean found)
      implements Entry {}

  /**
   * A line.
   *
   * @param symbol its symbol
   * @param tex symbol = formula = numbers, without the result
   * @param work the same as one line of text
   * @param plain the whole line as text, with the result
   * @param number the result
   * @param unit the unit of the result
   * @param meaning what it is
   * @param reference words for the margin
   * @param caseTex the condition that held, for a piecewise line, or empty
   * @param casePlain the same as text
   * @param substituted the formula with the printed numbers, for the spreadsheet and for redoing
   */
  public record PrintedLine(
      String symbol,
      String tex,
      String work,
      String plain,
      String number,
      Unit unit,
      String meaning,
      String reference,
      String caseTex,
      String casePlain,
      Shown substituted)
      implements Entry {}

  /**
   * A table.
   *
   * @param id name of the table on its sheet
   * @param caption words above it
   * @param label heading of the first column
   * @param columns the columns
   * @param rows the rows
   * @param scalars values of the sheet that the columns use
   * @param totals sums and extremes
   */
  public record PrintedTable(
      String id,
      String caption,
      String label,
      List<PrintedColumn> columns,
      List<PrintedRow> rows,
      List<PrintedScalar> scalars,
      List<PrintedTotal> totals)
      implements Entry {}

  /** A column: symbol, unit, meaning, formula if it has one, words for the margin. */
  public record PrintedColumn(
      String symbol,
      String symbolTex,
      Unit unit,
      String meaning,
      List<String> formulaTex,
      String formulaPlain,
      String reference) {}

  /** A row: its label, one number a column, and the substituted formula of each formula column. */
  public record PrintedRow(String label, List<String> cells, Map<String, Shown> substituted) {}

  /** A value of the sheet used by a table, as printed below it. */
  public record PrintedScalar(String symbol, String tex, String plain, String number, Unit unit) {}

  /** A total. */
  public record PrintedTotal(
      String symbol,
      String tex,
      String plain,
      String number,
      Unit unit,
      String meaning,
      CalcTable.Kind kind,
      String column) {}

  /**
   * A requirement.
   *
   * @param tex both sides with their numbers and the sign that holds
   * @param plain the same as text
   * @param meaning what is required
   * @param reference words for the margin
   * @param satisfied whether it holds, compared unrounded
   * @param utilisation demand over capacity as printed, or empty
   * @param left left side with numbers
   * @param right right side with numbers
   * @param leftNumber printed value of the left side
   * @param rightNumber printed value of the right side
   * @param unit unit of both
   */
  public record PrintedRequire(
      String tex,
      String plain,
      String meaning,
      String reference,
      boolean satisfied,
      String utilisation,
      Shown left,
      Shown right,
      String leftNumber,
      String rightNumber,
      Unit unit)
      implements Entry {}

  /** A sentence. */
  public record PrintedNote(String text) implements Entry {}
}
