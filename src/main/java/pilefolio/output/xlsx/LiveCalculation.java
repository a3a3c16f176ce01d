package pilefolio.output.xlsx;

import static pilefolio.output.xlsx.SheetStyles.live;
import static pilefolio.output.xlsx.SheetStyles.put;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import pilefolio.trace.Calculation;
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
import pilefolio.trace.Element.Case;
import pilefolio.trace.Formula;
import pilefolio.trace.Given;
import pilefolio.trace.Printer;
import pilefolio.trace.Source;
import pilefolio.trace.SpreadsheetText;
import pilefolio.trace.Verdict.Result;
import pilefolio.units.DisplaySystem;
import pilefolio.units.Unit;

/** The calculations of one answer as rows with live cells. */
final class LiveCalculation {
  static final int VALUE = 4;
  static final int UNIT = 5;
  static final int ENGINE = 6;
  static final int FLAG = 7;

  private final XSSFSheet sheet;
  private final SheetStyles styles;
  private final DisplaySystem system;
  private final List<String> results = new ArrayList<>();
  private final Map<String, LiveSymbol> above = new HashMap<>();
  private int next;
  private LiveSymbols symbols;

  LiveCalculation(XSSFSheet sheet, SheetStyles styles, DisplaySystem system, int firstRow) {
    this.sheet = sheet;
    this.styles = styles;
    this.system = system;
    this.next = firstRow;
  }

  /** Addresses of the cells that hold the result of each requirement. */
  List<String> results() {
    return results;
  }

  /** The row below, counted from 0. */
  int nextRow() {
    return next;
  }

  /** Writes a calculation below the last. */
  void write(Calculation calculation) {
    symbols = new LiveSymbols();
    put(row().createCell(0), calculation.sheet().title(), styles.sheetName);
    for (Entry entry : calculation.entries()) {
      if (entry instanceof GivenEntry e) {
        given(
            e.element().symbol(),
            e.element().unit(),
            e.element().meaning(),
            e.given(),
            e.given().source().text(),
            styles.given);
      } else if (entry instanceof FoundEntry e) {
        given(
            e.element().symbol(),
            e.element().unit(),
            e.element().meaning(),
            e.given(),
            e.element().method(),
            styles.found);
      } else if (entry instanceof LineEntry e) {
        line(
            e.element().symbol(),
            e.element().unit(),
            List.of(new Case(null, e.element().formula())),
            new Words(
                e.element().meaning(),
                e.element().symbol() + " = " + e.element().formula().text(),
                e.element().reference().text()),
            e.element().formula(),
            e.value());
      } else if (entry instanceof ChooseEntry e) {
        line(
            e.element().symbol(),
            e.element().unit(),
            e.element().cases(),
            new Words(
                e.element().meaning(),
                e.element().symbol() + " = " + cases(e.element().cases()),
                e.element().reference().text()),
            e.taken().formula(),
            e.value());
      } else if (entry instanceof TableEntry e) {
        next = new LiveTable(sheet, styles, system, symbols).write(e, next);
      } else if (entry instanceof RequireEntry e) {
        require(e, new Printer(system).unit(e, calculation.sheet()));
      } else if (entry instanceof NoteEntry e) {
        put(row().createCell(1), e.element().text(), styles.quiet);
      }
    }
    symbols.all().forEach(above::put);
  }

  /** What stands beside a value. */
  private record Words(String meaning, String formula, String reference) {}

  /** The cases of a piecewise formula as one text. */
  static String cases(List<Case> cases) {
    List<String> parts = new ArrayList<>();
    for (Case one : cases) {
      String when =
          one.condition() != null
              ? " if " + one.condition().text()
              : cases.size() > 1 ? " otherwise" : "";
      parts.add(one.formula().text() + when);
    }
    return String.join("; ", parts);
  }

  private Row row() {
    return sheet.createRow(next++);
  }

  private Row worded(String symbol, Words words) {
    Row row = row();
    styles.symbol(row.createCell(0), symbol, styles.text);
    put(row.createCell(1), words.meaning(), styles.text);
    put(row.createCell(2), words.formula().replace('\'', '′'), styles.text);
    put(row.createCell(3), words.reference(), styles.text);
    row.createCell(8).setCellStyle(styles.entry);
    row.createCell(9).setCellStyle(styles.entry);
    return row;
  }

  private void given(
      String symbol, Unit declared, String meaning, Given given, String source, CellStyle style) {
    Unit unit = system.of(declared);
    Row row = worded(symbol, new Words(meaning, "", source));
    LiveSymbol from = sameAbove(given, unit);
    if (from == null) {
      put(row.createCell(VALUE), unit.fromSi(given.si()), style);
    } else {
      live(row.createCell(VALUE), from.address(), styles.live);
    }
    beside(row, unit, given.si(), from == null ? 0 : from.noise());
    symbols.add(symbol, address(row, VALUE), unit, given.si(), from == null ? 0 : from.noise());
  }

  /** A value handed on from a sheet above, so that a change there reaches it. */
  private LiveSymbol sameAbove(Given given, Unit unit) {
    if (!(given.source() instanceof Source.Line line)) {
      return null;
    }
    LiveSymbol symbol = above.get(line.symbol().replace('′', '\''));
    boolean same = symbol != null && symbol.si() == given.si() && symbol.unit().equals(unit);
    return same ? symbol : null;
  }

  private void line(
      String symbol, Unit declared, List<Case> cases, Words words, Formula taken, double si) {
    Unit unit = system.of(declared);
    Row row = worded(symbol, words);
    live(
        row.createCell(VALUE),
        SpreadsheetText.of(cases, unit, symbols::unit, symbols::address),
        styles.live);
    double noise = symbols.noise(taken);
    beside(row, unit, si, noise);
    symbols.add(symbol, address(row, VALUE), unit, si, noise);
  }

  private void beside(Row row, Unit unit, double si, double noise) {
    put(row.createCell(UNIT), unit.symbol(), styles.text);
    put(row.createCell(ENGINE), unit.fromSi(si), styles.engine);
    live(
        row.createCell(FLAG),
        Agreement.of(
            address(row, VALUE).replace("$", ""),
            address(row, ENGINE).replace("$", ""),
            noise / unit.factor()),
        styles.engine);
  }

  private void require(RequireEntry entry, Unit unit) {
    Comparison comparison = entry.element().condition().parts().get(0);
    Row left = side("left side", comparison.left(), entry.left(), unit);
    Row right = side("right side", comparison.right(), entry.right(), unit);
    Row result =
        worded(
            "",
            new Words(
                entry.element().meaning(),
                entry.element().condition().text(),
                entry.element().reference().text()));
    String l = address(left, VALUE);
    String r = address(right, VALUE);
    String sign =
        switch (comparison.sign()) {
          case AT_MOST -> "<=";
          case AT_LEAST -> ">=";
          case LESS -> "<";
          case MORE -> ">";
        };
    live(
        result.createCell(VALUE),
        "IF(" + l + sign + r + ",\"satisfied\",\"not satisfied\")",
        styles.verdict);
    Result words = entry.satisfied() ? Result.SATISFIED : Result.NOT_SATISFIED;
    put(result.createCell(ENGINE), words.words(), styles.engine);
    String own = address(result, VALUE);
    live(
        result.createCell(FLAG),
        "IF("
            + own
            + "="
            + address(result, ENGINE)
            + ",\""
            + Marks.AGREES
            + "\",\""
            + Marks.DIFFERS
            + "\")",
        styles.engine);
    results.add(own);
    boolean leftIsDemand = comparison.sign() == Sign.AT_MOST || comparison.sign() == Sign.LESS;
    utilisation(leftIsDemand ? l : r, leftIsDemand ? r : l, own, entry.utilisation());
  }

  private Row side(String name, Formula formula, double si, Unit unit) {
    Row row = worded("", new Words(name, formula.text(), ""));
    live(
        row.createCell(VALUE),
        SpreadsheetText.of(formula, unit, symbols::unit, symbols::address),
        styles.live);
    beside(row, unit, si, symbols.noise(formula));
    return row;
  }

  private void utilisation(String demand, String capacity, String result, OptionalDouble engine) {
    Row row = row();
    put(row.createCell(1), "demand over capacity", styles.text);
    live(
        row.createCell(VALUE),
        "IF("
            + capacity
            + ">0,MAX(0,"
            + demand
            + ")/"
            + capacity
            + ",IF("
            + result
            + "=\"satisfied\",\"–\",\"no capacity\"))",
        styles.live);
    if (engine.isPresent() && Double.isFinite(engine.getAsDouble())) {
      put(row.createCell(ENGINE), engine.getAsDouble(), styles.engine);
    } else {
      put(row.createCell(ENGINE), engine.isPresent() ? "no capacity" : "–", styles.engine);
    }
  }

  /** The absolute address of a cell. */
  static String address(Row row, int column) {
    return "$" + CellReference.convertNumToColString(column) + "$" + (row.getRowNum() + 1);
  }
}
