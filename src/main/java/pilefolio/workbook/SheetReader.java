package pilefolio.workbook;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import pilefolio.findings.CellRef;
import pilefolio.findings.Finding;
import pilefolio.units.Unit;
import pilefolio.units.Units;

/** Reads one sheet into rows, by its columns. */
final class SheetReader {
  /** Rows, from 0, among which the head row is looked for. */
  private static final int LAST_HEAD_ROW = 12;

  private static final int LAST_COLUMN = 200;

  private final SheetSpec spec;
  private final XSSFSheet sheet;
  private final CellLooker looker;
  private final Consumer<Finding> findings;
  private final Consumer<Row.Taken> defaults;
  private int head = -1;

  SheetReader(
      SheetSpec spec,
      XSSFSheet sheet,
      CellLooker looker,
      Consumer<Finding> findings,
      Consumer<Row.Taken> defaults) {
    this.spec = spec;
    this.sheet = sheet;
    this.looker = looker;
    this.findings = findings;
    this.defaults = defaults;
  }

  List<Row> read() {
    head = headRow();
    if (head < 0) {
      findings.accept(
          FindingKind.NO_HEAD_ROW.at(
              CellRef.sheet(spec.name()),
              "the row with the names of the columns is not found",
              "it holds: " + headNames()));
      return List.of();
    }
    reportMergedCells();
    return spec.isForm() ? List.of(form()) : table();
  }

  private String headNames() {
    return spec.isForm()
        ? String.join(", ", WorkbookSpec.ITEM, WorkbookSpec.VALUE, WorkbookSpec.UNIT)
        : String.join(", ", spec.columns().stream().map(Column::name).toList());
  }

  private static String plain(String name) {
    return name.replace('\u00a0', ' ').strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
  }

  private CellRef at(int row, int column) {
    return new CellRef(spec.name(), row + 1, column + 1);
  }

  private CellContent look(int row, int column) {
    XSSFRow cells = sheet.getRow(row);
    return looker.look(cells == null ? null : cells.getCell(column), at(row, column));
  }

  /** Text of a cell of the head; formulas and numbers are no names. */
  private String label(int row, int column) {
    XSSFRow cells = sheet.getRow(row);
    if (cells == null || cells.getCell(column) == null) {
      return "";
    }
    return switch (cells.getCell(column).getCellType()) {
      case STRING -> cells.getCell(column).getStringCellValue();
      case NUMERIC -> String.valueOf(cells.getCell(column).getNumericCellValue());
      default -> "";
    };
  }

  private int columns(int row) {
    XSSFRow cells = sheet.getRow(row);
    return cells == null ? 0 : Math.min(LAST_COLUMN, Math.max(0, cells.getLastCellNum()));
  }

  private int headRow() {
    Set<String> names = new HashSet<>();
    if (spec.isForm()) {
      names.addAll(
          List.of(plain(WorkbookSpec.ITEM), plain(WorkbookSpec.VALUE), plain(WorkbookSpec.UNIT)));
    } else {
      spec.columns().forEach(column -> names.add(plain(column.name())));
    }
    int best = -1;
    int most = Math.min(2, names.size()) - 1;
    for (int row = 0; row <= Math.min(LAST_HEAD_ROW, sheet.getLastRowNum()); row++) {
      int known = 0;
      for (int column = 0; column < columns(row); column++) {
        known += names.contains(plain(label(row, column))) ? 1 : 0;
      }
      if (known > most) {
        most = known;
        best = row;
      }
    }
    return best;
  }

  private void reportMergedCells() {
    for (CellRangeAddress region : sheet.getMergedRegions()) {
      if (region.getLastRow() >= head) {
        findings.accept(
            FindingKind.MERGED_CELLS.at(
                at(region.getFirstRow(), region.getFirstColumn()),
                "the cells " + region.formatAsString() + " are merged",
                "separate them and fill in each"));
      }
    }
  }

  // ---- tables

  private List<Row> table() {
    Map<Integer, Column<?>> columns = headColumns();
    Map<Integer, Unit> units = units(head + 1, columns);
    List<Row> rows = new ArrayList<>();
    int last = Math.min(sheet.getLastRowNum(), head + FileGate.MOST_ROWS);
    for (int at = head + 2; at <= last; at++) {
      if (sheet.getRow(at) == null || isExample(at)) {
        continue;
      }
      readRow(at, columns, units).ifPresent(rows::add);
    }
    if (rows.isEmpty() && spec.required()) {
      findings.accept(
          FindingKind.NO_ROWS.at(
              CellRef.sheet(spec.name()),
              "the sheet has no rows",
              "fill in at least one row below the units; example rows are not read"));
    }
    return rows;
  }

  private boolean isExample(int row) {
    return plain(label(row, 0)).startsWith(WorkbookSpec.EXAMPLE);
  }

  private Map<Integer, Column<?>> headColumns() {
    Map<Integer, Column<?>> columns = new LinkedHashMap<>();
    Set<Column<?>> met = new HashSet<>();
    Set<String> guessed = new HashSet<>();
    List<String> names = spec.columns().stream().map(Column::name).toList();
    for (int at = 0; at < columns(head); at++) {
      String label = label(head, at);
      if (label.isBlank()) {
        continue;
      }
      Optional<Column<?>> column = named(label);
      if (column.isEmpty()) {
        guessed.add(reportUnknown(at(head, at), "column", label, names));
      } else if (!met.add(column.get())) {
        reportTwice(at(head, at), "column", label);
      } else {
        columns.put(at, column.get());
        if (sheet.isColumnHidden(at)) {
          findings.accept(
              FindingKind.HIDDEN_COLUMN.at(
                  at(head, at),
                  "the column " + label + " is hidden",
                  "it is read all the same; show it or delete it"));
        }
      }
    }
    for (Column<?> column : spec.columns()) {
      if (column.need() == Need.REQUIRED
          && !met.contains(column)
          && !guessed.contains(column.name())) {
        findings.accept(
            FindingKind.MISSING_COLUMN.at(
                new CellRef(spec.name(), head + 1, 0),
                "the column " + column.name() + " is not there",
                column.meaning()));
      }
    }
    return columns;
  }

  private Optional<Column<?>> named(String label) {
    for (Column<?> column : spec.columns()) {
      if (plain(column.name()).equals(plain(label))) {
        return Optional.of(column);
      }
    }
    return Optional.empty();
  }

  /** The name that was probably meant, or an empty text. */
  private String reportUnknown(CellRef where, String what, String label, List<String> names) {
    Optional<String> near = Nearest.to(label, names);
    findings.accept(
        FindingKind.UNKNOWN_COLUMN.at(
            where,
            "the " + what + " \"" + NumberColumn.shortened(label) + "\" is not known",
            near.map(name -> "did you mean " + name + "?")
                .orElse("expected one of: " + String.join(", ", names))));
    return near.orElse("");
  }

  private void reportTwice(CellRef where, String what, String label) {
    findings.accept(
        FindingKind.DUPLICATE_COLUMN.at(
            where, "the " + what + " " + label.strip() + " stands there twice", "delete one"));
  }

  private Map<Integer, Unit> units(int row, Map<Integer, Column<?>> columns) {
    Map<Integer, Unit> units = new LinkedHashMap<>();
    columns.forEach(
        (at, column) -> {
          if (column instanceof NumberColumn number) {
            unit(number, label(row, at), at(row, at)).ifPresent(unit -> units.put(at, unit));
          } else {
            units.put(at, Units.ONE);
          }
        });
    return units;
  }

  private Optional<Unit> unit(NumberColumn column, String typed, CellRef where) {
    String text = typed.replace('\u00a0', ' ').strip();
    if (text.isEmpty() && column.hasUnit()) {
      findings.accept(
          FindingKind.MISSING_UNIT.at(
              where,
              "the unit of " + column.name() + " is missing",
              "type a unit, such as "
                  + column.unit().symbol()
                  + " or "
                  + column.usUnit().symbol()));
      return Optional.empty();
    }
    Optional<Unit> unit = Units.find(text);
    if (unit.isEmpty()) {
      findings.accept(
          FindingKind.UNKNOWN_UNIT.at(
              where,
              "the unit \"" + NumberColumn.shortened(text) + "\" is not known",
              "type a unit, such as "
                  + column.unit().symbol()
                  + " or "
                  + column.usUnit().symbol()));
      return Optional.empty();
    }
    Optional<Unit> fitting = column.fitting(unit.get());
    if (fitting.isEmpty()) {
      findings.accept(
          FindingKind.UNIT_DOES_NOT_FIT.at(
              where,
              "the unit " + text + " does not fit " + column.name(),
              column.hasUnit()
                  ? "type a unit such as "
                      + column.unit().symbol()
                      + " or "
                      + column.usUnit().symbol()
                  : "leave the unit empty; it is a plain number"));
    }
    return fitting;
  }

  private Optional<Row> readRow(int at, Map<Integer, Column<?>> columns, Map<Integer, Unit> units) {
    Row row = new Row(spec, at(at, 0), defaults);
    List<Column<?>> empty = new ArrayList<>();
    boolean anything = false;
    for (Map.Entry<Integer, Column<?>> entry : columns.entrySet()) {
      Column<?> column = entry.getValue();
      CellRef cell = at(at, entry.getKey());
      row.place(column, cell);
      CellContent content = look(at, entry.getKey());
      if (content instanceof CellContent.Empty) {
        empty.add(column);
      } else {
        anything = true;
        readCell(row, column, content, cell, Optional.ofNullable(units.get(entry.getKey())));
      }
    }
    reportStrayValues(at, columns);
    if (!anything) {
      return Optional.empty();
    }
    for (Column<?> column : empty) {
      reportMissing(row, column, units(columns, units, column));
    }
    if (sheet.getRow(at).getZeroHeight()) {
      findings.accept(
          FindingKind.HIDDEN_ROW.at(
              new CellRef(spec.name(), at + 1, 0),
              "the row is hidden",
              "it is read all the same; show it or delete it"));
    }
    return row.isEmpty() ? Optional.empty() : Optional.of(row);
  }

  private static Unit units(
      Map<Integer, Column<?>> columns, Map<Integer, Unit> units, Column<?> column) {
    for (Map.Entry<Integer, Column<?>> entry : columns.entrySet()) {
      if (entry.getValue().equals(column) && units.containsKey(entry.getKey())) {
        return units.get(entry.getKey());
      }
    }
    return column instanceof NumberColumn number ? number.unit() : Units.ONE;
  }

  private void reportMissing(Row row, Column<?> column, Unit unit) {
    if (column.need() == Need.REQUIRED) {
      findings.accept(
          FindingKind.MISSING.at(
              row.place(column), column.name() + " is empty", column.expected(unit)));
    }
  }

  /** Reads a cell unless its unit is not to be had; then a finding about the unit is enough. */
  private void readCell(
      Row row, Column<?> column, CellContent content, CellRef cell, Optional<Unit> unit) {
    if (content instanceof CellContent.Unusable || unit.isEmpty()) {
      return;
    }
    column
        .read(content, new Place(cell, unit.get(), findings))
        .ifPresent(value -> row.value(column, value));
  }

  /** An unknown column has been reported by its head; only cells without any head are stray. */
  private void reportStrayValues(int at, Map<Integer, Column<?>> columns) {
    for (int column = 0; column < columns(at); column++) {
      String text = label(at, column);
      if (!columns.containsKey(column) && !text.isBlank() && label(head, column).isBlank()) {
        findings.accept(
            FindingKind.STRAY_VALUE.at(
                at(at, column),
                "\"" + NumberColumn.shortened(text) + "\" stands in no column",
                "it is not read; delete it or put it into a column"));
      }
    }
  }

  // ---- forms

  private Row form() {
    int item = columnOf(WorkbookSpec.ITEM, 0);
    int value = columnOf(WorkbookSpec.VALUE, 1);
    int unit = columnOf(WorkbookSpec.UNIT, 2);
    Row form = new Row(spec, at(head + 1, item), defaults);
    Set<Column<?>> met = new HashSet<>();
    Set<String> guessed = new HashSet<>();
    List<String> names = spec.columns().stream().map(Column::name).toList();
    for (int at = head + 1; at <= sheet.getLastRowNum(); at++) {
      String label = label(at, item);
      if (label.isBlank()) {
        continue;
      }
      Optional<Column<?>> column = named(label);
      if (column.isEmpty()) {
        guessed.add(reportUnknown(at(at, item), "item", label, names));
      } else if (!met.add(column.get())) {
        reportTwice(at(at, item), "item", label);
      } else {
        readItem(form, column.get(), at, value, label(at, unit), at(at, unit));
      }
    }
    for (Column<?> column : spec.columns()) {
      if (column.need() == Need.REQUIRED
          && !met.contains(column)
          && !guessed.contains(column.name())) {
        findings.accept(
            FindingKind.MISSING_COLUMN.at(
                CellRef.sheet(spec.name()),
                "the item " + column.name() + " is not there",
                column.meaning()));
      }
    }
    return form;
  }

  private void readItem(
      Row form, Column<?> column, int at, int valueColumn, String unitText, CellRef unitCell) {
    CellRef cell = at(at, valueColumn);
    form.place(column, cell);
    CellContent content = look(at, valueColumn);
    if (content instanceof CellContent.Empty) {
      reportMissing(form, column, column instanceof NumberColumn n ? n.unit() : Units.ONE);
      return;
    }
    Optional<Unit> unit =
        column instanceof NumberColumn number
            ? unit(number, unitText, unitCell)
            : Optional.of(Units.ONE);
    readCell(form, column, content, cell, unit);
    if (sheet.getRow(at).getZeroHeight()) {
      findings.accept(
          FindingKind.HIDDEN_ROW.at(
              new CellRef(spec.name(), at + 1, 0),
              "the row is hidden",
              "it is read all the same; show it or delete it"));
    }
  }

  private int columnOf(String name, int usual) {
    for (int at = 0; at < columns(head); at++) {
      if (plain(label(head, at)).equals(plain(name))) {
        return at;
      }
    }
    return usual;
  }
}
