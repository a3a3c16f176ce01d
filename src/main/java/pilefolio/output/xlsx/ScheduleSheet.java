package pilefolio.output.xlsx;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import pilefolio.units.DisplaySystem;
import pilefolio.units.Unit;

/** A schedule: a title, notes, a head with units, rows, and a row of live sums. */
final class ScheduleSheet {
  private static final String NOT_CHECKED = "not checked";

  /** A column: its heading, unit, decimals, width, and whether the last row sums it. */
  record Column(String name, Unit unit, int decimals, int width, boolean summed) {
    static Column text(String name, int width) {
      return new Column(name, null, 0, width, false);
    }

    static Column number(String name, Unit unit, int decimals) {
      return new Column(name, unit, decimals, 12, false);
    }

    Column sum() {
      return new Column(name, unit, decimals, width, true);
    }
  }

  private final XSSFSheet sheet;
  private final SheetStyles styles;
  private final DisplaySystem system;
  private final Map<Integer, CellStyle> decimals = new HashMap<>();
  private final List<Column> columns = new ArrayList<>();
  private int next;
  private int firstRow;

  ScheduleSheet(SpreadsheetFile file, String name, String title, DisplaySystem system) {
    this.sheet = file.sheet(name);
    this.styles = file.styles();
    this.system = system;
    SheetStyles.put(sheet.createRow(next++).createCell(0), title, styles.title);
    sheet.getPrintSetup().setLandscape(true);
    sheet.setFitToPage(true);
    sheet.getPrintSetup().setFitHeight((short) 0);
  }

  /** A sentence above the head or below the rows. */
  void note(String text) {
    SheetStyles.put(sheet.createRow(next++).createCell(0), text, styles.quiet);
  }

  /** The head; rows follow. */
  void head(List<Column> wanted) {
    columns.addAll(wanted);
    next++;
    Row names = sheet.createRow(next++);
    Row units = sheet.createRow(next++);
    for (int i = 0; i < columns.size(); i++) {
      Column column = columns.get(i);
      sheet.setColumnWidth(i, column.width() * 256);
      SheetStyles.put(names.createCell(i), column.name(), styles.heading);
      String unit = column.unit() == null ? "" : system.of(column.unit()).symbol();
      SheetStyles.put(units.createCell(i), unit, styles.quiet);
    }
    firstRow = next;
    sheet.createFreezePane(1, next);
    sheet.setRepeatingRows(new CellRangeAddress(next - 2, next - 1, -1, -1));
  }

  /**
   * A row. Texts and dates are written as they are, numbers are coherent SI; an absent number is
   * marked as not checked, and null leaves the cell empty.
   */
  void row(Object... values) {
    if (values.length != columns.size()) {
      throw new IllegalArgumentException(values.length + " values, " + columns.size() + " columns");
    }
    Row row = sheet.createRow(next++);
    for (int i = 0; i < values.length; i++) {
      write(row.createCell(i), values[i], columns.get(i));
    }
  }

  private void write(Cell cell, Object value, Column column) {
    if (value instanceof LocalDate date) {
      cell.setCellValue(date);
      cell.setCellStyle(styles.date);
    } else if (value instanceof OptionalDouble number) {
      if (number.isPresent()) {
        number(cell, number.getAsDouble(), column);
      } else {
        SheetStyles.put(cell, NOT_CHECKED, styles.quiet);
      }
    } else if (value instanceof Number number) {
      number(cell, number.doubleValue(), column);
    } else if (value != null) {
      SheetStyles.put(cell, value.toString(), styles.text);
    }
  }

  private void number(Cell cell, double si, Column column) {
    double shown = column.unit() == null ? si : system.of(column.unit()).fromSi(si);
    SheetStyles.put(cell, shown, style(column.decimals()));
  }

  private CellStyle style(int count) {
    return decimals.computeIfAbsent(count, styles::decimals);
  }

  /** The sums of the columns that have one, as live formulas. */
  void sums() {
    if (next == firstRow) {
      return;
    }
    Row row = sheet.createRow(next);
    SheetStyles.put(row.createCell(0), "Total", styles.total);
    for (int i = 1; i < columns.size(); i++) {
      Cell cell = row.createCell(i);
      cell.setCellStyle(styles.total);
      if (columns.get(i).summed()) {
        String letter = CellReference.convertNumToColString(i);
        cell.setCellFormula("SUM(" + letter + (firstRow + 1) + ":" + letter + next + ")");
        cell.setCellStyle(style(columns.get(i).decimals()));
      }
    }
    sheet.setAutoFilter(new CellRangeAddress(firstRow - 1, next - 1, 0, columns.size() - 1));
    next++;
  }
}
