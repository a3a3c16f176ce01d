package pilefolio.workbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pilefolio.units.DisplaySystem;

/**
 * A workbook as readable text.
 *
 * <pre>
 * // a note
 * units SI                       units of columns without a line of their own
 * == Ground                      name of a sheet
 * Profile | Layer | Top level    head of a table (a form needs none)
 * ~ | | ft                       its units, if they are not the usual ones
 * G1 | Upper sand | 12.5         rows
 * </pre>
 *
 * Cells are as {@link SheetText} says.
 */
final class TextTables {
  private DisplaySystem system = DisplaySystem.SI;
  private final Map<String, SheetText> sheets = new LinkedHashMap<>();

  static TextTables sample(String name) {
    return parse(source(name));
  }

  /** The text of a sample. */
  static String source(String name) {
    try {
      return Files.readString(Path.of("src/test/resources/samples", name + ".txt"));
    } catch (IOException missing) {
      throw new IllegalStateException(missing);
    }
  }

  static TextTables parse(String text) {
    TextTables tables = new TextTables();
    String sheet = "";
    List<String> lines = new ArrayList<>();
    for (String line : text.lines().toList()) {
      String stripped = line.strip();
      if (stripped.startsWith("units ")) {
        tables.system = DisplaySystem.valueOf(stripped.substring(6).strip());
      } else if (stripped.startsWith("== ")) {
        tables.put(sheet, lines);
        sheet = stripped.substring(3).strip();
        lines.clear();
      } else if (!stripped.isEmpty() && !stripped.startsWith("//")) {
        lines.add(line);
      }
    }
    tables.put(sheet, lines);
    return tables;
  }

  private void put(String sheet, List<String> lines) {
    if (sheet.isEmpty()) {
      return;
    }
    boolean form =
        WorkbookSpec.SHEETS.stream().anyMatch(spec -> spec.name().equals(sheet) && spec.isForm());
    List<List<String>> rows = new ArrayList<>();
    List<String> head =
        form
            ? List.of(WorkbookSpec.ITEM, WorkbookSpec.VALUE, WorkbookSpec.UNIT)
            : cells(lines.get(0));
    List<String> units = new ArrayList<>();
    for (String line : lines.subList(form ? 0 : 1, lines.size())) {
      List<String> cells = cells(line);
      if (cells.get(0).startsWith("~")) {
        units.addAll(cells);
        units.set(0, cells.get(0).substring(1).strip());
      } else {
        rows.add(cells);
      }
    }
    sheets.put(sheet, new SheetText(new ArrayList<>(head), units, rows));
  }

  private static List<String> cells(String line) {
    List<String> cells = new ArrayList<>();
    for (String cell : line.split("\\|", -1)) {
      cells.add(cell.strip());
    }
    return cells;
  }

  DisplaySystem system() {
    return system;
  }

  /** The same texts under the unit row of another system. */
  TextTables in(DisplaySystem other) {
    system = other;
    return this;
  }

  SheetText sheet(String sheet) {
    return sheets.get(sheet);
  }

  byte[] bytes() throws IOException {
    return WorkbookWriter.filled(system, KnownNames.none(), sheets);
  }

  ReadResult read() throws IOException {
    return WorkbookReader.read(bytes(), KnownNames.none());
  }
}
