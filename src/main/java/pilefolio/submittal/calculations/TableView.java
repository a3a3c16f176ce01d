package pilefolio.submittal.calculations;

import java.util.ArrayList;
import java.util.List;
import pilefolio.trace.Printed.PrintedColumn;
import pilefolio.trace.Printed.PrintedRow;
import pilefolio.trace.Printed.PrintedTable;

/**
 * A table of a calculation sheet with the widths of its columns.
 *
 * @param caption words above it
 * @param label heading of the first column
 * @param labelWidth width of the first column, per cent
 * @param columns the columns
 * @param rows the rows
 * @param scalars values that the columns use, as TeX and text
 * @param totals totals, as TeX and text
 * @param dense true if the columns need a smaller type
 */
public record TableView(
    String caption,
    String label,
    String labelWidth,
    List<ColumnView> columns,
    List<RowView> rows,
    List<Formula> scalars,
    List<Formula> totals,
    boolean dense) {

  private static final int LEAST_CHARACTERS = 5;
  private static final int LABEL_CHARACTERS = 26;
  private static final int DENSE_CHARACTERS = 105;

  /** A formula as TeX and as text, with what it is and its reference. */
  public record Formula(String tex, String plain, String meaning, String reference) {}

  /** A column with its formulas. */
  public record ColumnView(
      String symbolTex,
      String symbol,
      String unit,
      String meaning,
      String width,
      List<Formula> formulas,
      String reference) {}

  /** A row. */
  public record RowView(String label, List<String> cells) {}

  static TableView of(PrintedTable table) {
    int[] characters = new int[table.columns().size()];
    int label = table.label().length();
    for (PrintedRow row : table.rows()) {
      label = Math.max(label, row.label().length());
    }
    int total = Math.min(label, LABEL_CHARACTERS) + 2;
    for (int i = 0; i < characters.length; i++) {
      int most = Math.max(LEAST_CHARACTERS, table.columns().get(i).unit().symbol().length());
      for (PrintedRow row : table.rows()) {
        most = Math.max(most, row.cells().get(i).length());
      }
      characters[i] = most + 2;
      total += characters[i];
    }
    List<ColumnView> columns = new ArrayList<>();
    for (int i = 0; i < characters.length; i++) {
      columns.add(column(table.columns().get(i), percent(characters[i], total)));
    }
    return new TableView(
        table.caption(),
        table.label(),
        percent(Math.min(label, LABEL_CHARACTERS) + 2, total),
        List.copyOf(columns),
        table.rows().stream().map(row -> new RowView(row.label(), row.cells())).toList(),
        table.scalars().stream().map(s -> new Formula(s.tex(), s.plain(), "", "")).toList(),
        table.totals().stream().map(t -> new Formula(t.tex(), t.plain(), t.meaning(), "")).toList(),
        total > DENSE_CHARACTERS);
  }

  private static String percent(int part, int total) {
    return String.format(java.util.Locale.ROOT, "%.2f%%", 100.0 * part / total);
  }

  private static ColumnView column(PrintedColumn column, String width) {
    List<Formula> formulas =
        column.formulaTex().stream()
            .map(tex -> new Formula(tex, column.symbol() + " = " + column.formulaPlain(), "", ""))
            .toList();
    return new ColumnView(
        column.symbolTex(),
        column.symbol(),
        column.unit().symbol(),
        column.meaning(),
        width,
        formulas,
        column.reference());
  }
}
