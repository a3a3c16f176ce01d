package pilefolio.output.xlsx;

import static pilefolio.output.xlsx.LiveCalculation.address;
import static pilefolio.output.xlsx.SheetStyles.live;
import static pilefolio.output.xlsx.SheetStyles.put;

import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import pilefolio.trace.CalcTable;
import pilefolio.trace.CalcTable.CarriedColumn;
import pilefolio.trace.CalcTable.ChooseColumn;
import pilefolio.trace.CalcTable.Column;
import pilefolio.trace.CalcTable.GivenColumn;
import pilefolio.trace.CalcTable.Kind;
import pilefolio.trace.CalcTable.LineColumn;
import pilefolio.trace.CalcTable.Total;
import pilefolio.trace.Calculation.RowValues;
import pilefolio.trace.Calculation.TableEntry;
import pilefolio.trace.Element.Case;
import pilefolio.trace.Expr;
import pilefolio.trace.Formula;
import pilefolio.trace.SpreadsheetText;
import pilefolio.units.DisplaySystem;
import pilefolio.units.Unit;

/** A table with live cells: to its right whether each row agrees, and the engine's numbers. */
final class LiveTable {
  private static final int LABEL = 1;

  private final XSSFSheet sheet;
  private final SheetStyles styles;
  private final DisplaySystem system;
  private final LiveSymbols symbols;
  private int next;

  LiveTable(XSSFSheet sheet, SheetStyles styles, DisplaySystem system, LiveSymbols symbols) {
    this.sheet = sheet;
    this.styles = styles;
    this.system = system;
    this.symbols = symbols;
  }

  /** Writes the table from a row on; the row below it comes back. */
  int write(TableEntry entry, int firstRow) {
    next = firstRow;
    CalcTable table = entry.table();
    put(sheet.createRow(next++).createCell(LABEL), table.caption(), styles.sheetName);
    table.columns().forEach(this::legend);
    heads(table);
    List<LiveSymbols> done = new ArrayList<>();
    for (RowValues row : entry.rows()) {
      done.add(row(table, row, done));
    }
    table.totals().forEach(total -> total(total, entry, done));
    return next;
  }

  private void legend(Column column) {
    Row row = sheet.createRow(next++);
    styles.symbol(row.createCell(0), column.symbol(), styles.text);
    put(row.createCell(LABEL), column.meaning(), styles.text);
    String formula = "";
    String reference = "";
    if (column instanceof LineColumn line) {
      formula = line.formula().text();
      reference = line.reference().text();
    } else if (column instanceof ChooseColumn choose) {
      formula = LiveCalculation.cases(choose.cases());
      reference = choose.reference().text();
    } else if (column instanceof CarriedColumn carried) {
      formula = carried.from() + " of the row above; " + carried.first() + " in the first";
    }
    if (!formula.isEmpty()) {
      String text = column.symbol() + " = " + formula;
      put(row.createCell(2), text.replace('\'', '′'), styles.text);
    }
    put(row.createCell(3), reference, styles.text);
  }

  private void heads(CalcTable table) {
    Row names = sheet.createRow(next++);
    Row units = sheet.createRow(next++);
    put(names.createCell(LABEL), table.label(), styles.heading);
    int count = table.columns().size();
    for (int i = 0; i < count; i++) {
      Column column = table.columns().get(i);
      String unit = system.of(column.unit()).symbol();
      styles.symbol(names.createCell(valueColumn(i)), column.symbol(), styles.heading);
      put(units.createCell(valueColumn(i)), unit, styles.quiet);
      styles.symbol(names.createCell(engineColumn(i, count)), column.symbol(), styles.heading);
      put(units.createCell(engineColumn(i, count)), unit, styles.quiet);
    }
    put(names.createCell(valueColumn(count)), "Compared", styles.heading);
    put(units.createCell(engineColumn(0, count) - 1), "engine to the right", styles.quiet);
  }

  private static int valueColumn(int column) {
    return LiveCalculation.VALUE + column;
  }

  private static int engineColumn(int column, int count) {
    return LiveCalculation.VALUE + count + 1 + column;
  }

  private LiveSymbols row(CalcTable table, RowValues values, List<LiveSymbols> above) {
    Row row = sheet.createRow(next++);
    put(row.createCell(LABEL), values.label(), styles.text);
    LiveSymbols here = new LiveSymbols(symbols);
    List<String> agree = new ArrayList<>();
    int count = table.columns().size();
    for (int i = 0; i < count; i++) {
      Column column = table.columns().get(i);
      Unit unit = system.of(column.unit());
      double si = values.values().get(column.symbol());
      double noise = cell(row, i, column, values, here, above);
      put(row.createCell(engineColumn(i, count)), unit.fromSi(si), styles.engine);
      String address = address(row, valueColumn(i));
      here.add(column.symbol(), address, unit, si, noise);
      agree.add(
          Agreement.condition(
              address.replace("$", ""),
              address(row, engineColumn(i, count)).replace("$", ""),
              noise / unit.factor()));
    }
    live(
        row.createCell(valueColumn(count)),
        "IF(AND("
            + String.join(",", agree)
            + "),\""
            + Marks.AGREES
            + "\",\""
            + Marks.DIFFERS
            + "\")",
        styles.engine);
    return here;
  }

  /** Writes one live cell; its noise comes back. */
  private double cell(
      Row row,
      int index,
      Column column,
      RowValues values,
      LiveSymbols here,
      List<LiveSymbols> above) {
    Unit unit = system.of(column.unit());
    if (column instanceof GivenColumn) {
      double si = values.values().get(column.symbol());
      put(row.createCell(valueColumn(index)), unit.fromSi(si), styles.given);
      return 0;
    }
    List<Case> cases;
    Formula taken;
    LiveSymbols from = here;
    if (column instanceof LineColumn line) {
      taken = line.formula();
      cases = List.of(new Case(null, taken));
    } else if (column instanceof ChooseColumn choose) {
      taken = values.taken().get(column.symbol()).formula();
      cases = choose.cases();
    } else {
      CarriedColumn carried = (CarriedColumn) column;
      from = above.isEmpty() ? symbols : above.get(above.size() - 1);
      String symbol = above.isEmpty() ? carried.first() : carried.from();
      taken = new Formula(symbol, new Expr.Sym(symbol));
      cases = List.of(new Case(null, taken));
    }
    live(
        row.createCell(valueColumn(index)),
        SpreadsheetText.of(cases, unit, from::unit, from::address),
        styles.live);
    return from.noise(taken);
  }

  private void total(Total total, TableEntry entry, List<LiveSymbols> rows) {
    Unit unit = system.of(total.unit());
    double si = entry.totals().get(total.symbol());
    Row row = sheet.createRow(next++);
    styles.symbol(row.createCell(0), total.symbol(), styles.text);
    put(row.createCell(LABEL), total.meaning(), styles.text);
    put(
        row.createCell(2),
        (total.symbol() + " = " + total.kind().sign() + " " + total.column()).replace('\'', '′'),
        styles.text);
    String first = rows.get(0).address(total.column());
    String last = rows.get(rows.size() - 1).address(total.column());
    String function =
        switch (total.kind()) {
          case SUM -> "SUM";
          case LARGEST -> "MAX";
          case SMALLEST -> "MIN";
        };
    live(
        row.createCell(LiveCalculation.VALUE),
        function + "(" + first + ":" + last + ")",
        styles.live);
    put(row.createCell(LiveCalculation.UNIT), unit.symbol(), styles.text);
    put(row.createCell(LiveCalculation.ENGINE), unit.fromSi(si), styles.engine);
    double noise = 0;
    for (LiveSymbols one : rows) {
      LiveSymbol cell = one.get(total.column());
      double share = 1e-10 * Math.abs(cell.si()) + cell.noise();
      noise = total.kind() == Kind.SUM ? noise + share : Math.max(noise, share);
    }
    String address = address(row, LiveCalculation.VALUE);
    live(
        row.createCell(LiveCalculation.FLAG),
        Agreement.of(address, address(row, LiveCalculation.ENGINE), noise / unit.factor()),
        styles.engine);
    row.createCell(8).setCellStyle(styles.entry);
    row.createCell(9).setCellStyle(styles.entry);
    symbols.add(total.symbol(), address, unit, si, noise);
  }
}
