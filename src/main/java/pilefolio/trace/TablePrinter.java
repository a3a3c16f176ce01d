package pilefolio.trace;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import pilefolio.trace.CalcTable.ChooseColumn;
import pilefolio.trace.CalcTable.Column;
import pilefolio.trace.CalcTable.Kind;
import pilefolio.trace.CalcTable.LineColumn;
import pilefolio.trace.CalcTable.Total;
import pilefolio.trace.Calculation.RowValues;
import pilefolio.trace.Calculation.TableEntry;
import pilefolio.trace.Element.Case;
import pilefolio.trace.Printed.PrintedColumn;
import pilefolio.trace.Printed.PrintedRow;
import pilefolio.trace.Printed.PrintedScalar;
import pilefolio.trace.Printed.PrintedTable;
import pilefolio.trace.Printed.PrintedTotal;
import pilefolio.units.DisplaySystem;
import pilefolio.units.NumberText;
import pilefolio.units.Unit;

/**
 * Prints a table whose every cell can be redone from the cells of its row and the values below the
 * table; only the rows that need more digits get them.
 */
final class TablePrinter {
  private static final int MOST_DIGITS = 12;
  private static final int MOST_ROUNDS = 400;

  private final TableEntry entry;
  private final Map<String, Double> sheetValues;
  private final Map<String, Unit> units = new LinkedHashMap<>();
  private final Set<String> columnNames = new LinkedHashSet<>();
  private final List<Map<String, Integer>> cellDigits = new ArrayList<>();
  private final Map<String, Integer> scalarDigits = new TreeMap<>();

  TablePrinter(
      DisplaySystem system, TableEntry entry, Map<String, Double> si, Map<String, Unit> units) {
    this.entry = entry;
    this.sheetValues = si;
    this.units.putAll(units);
    for (Column column : entry.table().columns()) {
      this.units.put(column.symbol(), system.of(column.unit()));
      columnNames.add(column.symbol());
    }
    entry.rows().forEach(row -> cellDigits.add(new LinkedHashMap<>()));
  }

  PrintedTable print() {
    boolean settled = false;
    for (int round = 0; round < MOST_ROUNDS && !settled; round++) {
      settled = settleRows();
      settled = settleTotals() && settled;
    }
    if (!settled) {
      throw new FormulaException(
          "no number of digits lets the table \"" + entry.table().caption() + "\" be redone");
    }
    return printed();
  }

  private boolean settleRows() {
    boolean settled = true;
    for (int index = 0; index < entry.rows().size(); index++) {
      RowValues row = entry.rows().get(index);
      for (Column column : entry.table().columns()) {
        Formula formula = formula(column, row);
        if (formula == null) {
          continue;
        }
        String wanted = cell(index, column.symbol());
        if (!Printer.gives(substituted(formula, column, index), wanted)) {
          settled = false;
          more(formula, column, index);
        }
      }
    }
    return settled;
  }

  /** One more digit for every number of the line that is not yet exact, or else for its result. */
  private void more(Formula formula, Column column, int index) {
    boolean any = false;
    for (String name : formula.symbols()) {
      if (columnNames.contains(name)) {
        if (!exact(entry.rows().get(index).values().get(name), name, digits(index, name))) {
          cellDigits.get(index).put(name, digits(index, name) + 1);
          any = true;
        }
      } else if (!exact(sheetValues.get(name), name, scalar(name))) {
        scalarDigits.put(name, scalar(name) + 1);
        any = true;
      }
    }
    if (!any) {
      cellDigits.get(index).put(column.symbol(), digits(index, column.symbol()) + 1);
    }
  }

  private boolean settleTotals() {
    boolean settled = true;
    for (Total total : entry.table().totals()) {
      if (total.kind() == Kind.SUM && !sumHolds(total)) {
        settled = false;
        for (int index = 0; index < entry.rows().size(); index++) {
          if (!exact(
              entry.rows().get(index).values().get(total.column()),
              total.column(),
              digits(index, total.column()))) {
            cellDigits.get(index).put(total.column(), digits(index, total.column()) + 1);
          }
        }
      }
    }
    return settled;
  }

  private boolean sumHolds(Total total) {
    double sum = 0;
    for (int index = 0; index < entry.rows().size(); index++) {
      sum += NumberText.parse(cell(index, total.column()));
    }
    String wanted = total(total);
    return NumberText.parse(NumberText.fixed(sum, ResultText.decimals(wanted)))
        == NumberText.parse(wanted);
  }

  private String total(Total total) {
    double value = units.get(total.column()).fromSi(entry.totals().get(total.symbol()));
    if (total.kind() != Kind.SUM) {
      for (int index = 0; index < entry.rows().size(); index++) {
        if (entry
            .rows()
            .get(index)
            .values()
            .get(total.column())
            .equals(entry.totals().get(total.symbol()))) {
          return cell(index, total.column());
        }
      }
      throw new FormulaException("total " + total.symbol() + " is no cell of its column");
    }
    double largest =
        entry.rows().stream()
            .mapToDouble(row -> Math.abs(row.values().get(total.column())))
            .max()
            .orElse(0);
    int finest = NumberText.decimals(units.get(total.column()).fromSi(largest), 5);
    String text = NumberText.usual(value);
    return ResultText.decimals(text) > finest ? NumberText.fixed(value, finest) : text;
  }

  private Formula formula(Column column, RowValues row) {
    if (column instanceof LineColumn line) {
      return line.formula();
    }
    if (column instanceof ChooseColumn choose) {
      return row.taken().get(choose.symbol()).formula();
    }
    return null;
  }

  private Shown substituted(Formula formula, Column column, int index) {
    return Substitution.withNumbers(
        formula.expr(),
        name ->
            columnNames.contains(name)
                ? Substitution.printed(name, cell(index, name), units.get(name))
                : Substitution.printed(name, scalarText(name), units.get(name)),
        units.get(column.symbol()));
  }

  private String cell(int index, String name) {
    RowValues row = entry.rows().get(index);
    double si = row.values().get(name);
    Unit unit = units.get(name);
    Column column =
        entry.table().columns().stream()
            .filter(c -> c.symbol().equals(name))
            .findFirst()
            .orElseThrow();
    Formula formula = formula(column, row);
    if (formula == null) {
      return NumberText.significant(unit.fromSi(si), digits(index, name));
    }
    return ResultText.of(
        formula.expr(),
        symbol -> columnNames.contains(symbol) ? row.values().get(symbol) : sheetValues.get(symbol),
        si,
        unit,
        digits(index, name));
  }

  private String scalarText(String name) {
    return NumberText.significant(units.get(name).fromSi(sheetValues.get(name)), scalar(name));
  }

  private boolean exact(double si, String name, int digits) {
    double value = units.get(name).fromSi(si);
    return digits >= MOST_DIGITS
        || NumberText.significant(value, digits).equals(NumberText.significant(value, MOST_DIGITS));
  }

  private int digits(int index, String name) {
    return cellDigits.get(index).getOrDefault(name, NumberText.USUAL_DIGITS);
  }

  private int scalar(String name) {
    return scalarDigits.getOrDefault(name, NumberText.USUAL_DIGITS);
  }

  private PrintedTable printed() {
    CalcTable table = entry.table();
    List<PrintedColumn> columns = new ArrayList<>();
    Set<String> scalars = new LinkedHashSet<>();
    for (Column column : table.columns()) {
      columns.add(column(column, scalars));
    }
    List<PrintedRow> rows = new ArrayList<>();
    for (int index = 0; index < entry.rows().size(); index++) {
      List<String> cells = new ArrayList<>();
      Map<String, Shown> substituted = new LinkedHashMap<>();
      for (Column column : table.columns()) {
        cells.add(cell(index, column.symbol()));
        Formula formula = formula(column, entry.rows().get(index));
        if (formula != null) {
          substituted.put(column.symbol(), substituted(formula, column, index));
        }
      }
      rows.add(new PrintedRow(entry.rows().get(index).label(), List.copyOf(cells), substituted));
    }
    return new PrintedTable(
        table.id(),
        table.caption(),
        table.label(),
        List.copyOf(columns),
        List.copyOf(rows),
        scalars.stream().map(this::scalarPrinted).toList(),
        table.totals().stream().map(this::totalPrinted).toList());
  }

  private PrintedColumn column(Column column, Set<String> scalars) {
    List<String> tex = new ArrayList<>();
    List<String> plain = new ArrayList<>();
    String reference = "";
    if (column instanceof LineColumn line) {
      tex.add(tex(column, line.formula(), ""));
      plain.add(plain(line.formula(), ""));
      addScalars(line.formula().symbols(), scalars);
      reference = line.reference().margin();
    } else if (column instanceof ChooseColumn choose) {
      for (Case one : choose.cases()) {
        String when = one.condition() == null ? "otherwise" : "if " + one.condition().text();
        tex.add(tex(column, one.formula(), conditionTex(one)));
        plain.add(plain(one.formula(), when));
        addScalars(one.formula().symbols(), scalars);
        if (one.condition() != null) {
          addScalars(one.condition().symbols(), scalars);
        }
      }
      reference = choose.reference().margin();
    }
    return new PrintedColumn(
        column.symbol(),
        Tex.symbol(column.symbol()),
        units.get(column.symbol()),
        column.meaning(),
        List.copyOf(tex),
        String.join("; ", plain),
        reference);
  }

  private static String conditionTex(Case one) {
    if (one.condition() == null) {
      return "\\;\\mathrm{otherwise}";
    }
    List<String> parts = new ArrayList<>();
    for (Condition.Comparison part : one.condition().parts()) {
      parts.add(
          Tex.of(Substitution.withSymbols(part.left().expr()))
              + " "
              + part.sign().text()
              + " "
              + Tex.of(Substitution.withSymbols(part.right().expr())));
    }
    return "\\;\\mathrm{if}\\; " + String.join("\\;\\mathrm{and}\\; ", parts);
  }

  private void addScalars(Set<String> names, Set<String> scalars) {
    names.stream().filter(name -> !columnNames.contains(name)).forEach(scalars::add);
  }

  private static String tex(Column column, Formula formula, String when) {
    return Tex.symbol(column.symbol())
        + " = "
        + Tex.of(Substitution.withSymbols(formula.expr()))
        + when;
  }

  private static String plain(Formula formula, String when) {
    String text = PlainText.of(Substitution.withSymbols(formula.expr()));
    return when.isEmpty() ? text : text + " " + when;
  }

  private PrintedScalar scalarPrinted(String name) {
    Unit unit = units.get(name);
    String number = scalarText(name);
    return new PrintedScalar(
        name,
        Tex.symbol(name) + " = " + Tex.value(number, unit.symbol()),
        name + " = " + number + PlainText.spaced(unit.symbol()),
        number,
        unit);
  }

  private PrintedTotal totalPrinted(Total total) {
    Unit unit = units.get(total.column());
    String number = total(total);
    String sign = total.kind().sign();
    // ΣH needs no "= Σ H" after it.
    boolean named = total.symbol().equals(sign + total.column());
    return new PrintedTotal(
        total.symbol(),
        Tex.symbol(total.symbol())
            + " = "
            + (named
                ? ""
                : (total.kind() == Kind.SUM ? "Σ" : "\\mathrm{" + sign + "}")
                    + "\\,"
                    + Tex.symbol(total.column())
                    + " = ")
            + Tex.value(number, unit.symbol()),
        total.symbol()
            + " = "
            + (named ? "" : sign + " " + total.column() + " = ")
            + number
            + PlainText.spaced(unit.symbol()),
        number,
        unit,
        total.meaning(),
        total.kind(),
        total.column());
  }
}
