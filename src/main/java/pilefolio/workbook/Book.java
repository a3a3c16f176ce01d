package pilefolio.workbook;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The rows of every sheet, as far as they could be read.
 *
 * @param rows rows by sheet; a form has one
 */
record Book(Map<SheetSpec, List<Row>> rows) {
  List<Row> rows(SheetSpec spec) {
    return rows.getOrDefault(spec, List.of());
  }

  Optional<Row> form(SheetSpec spec) {
    return rows(spec).stream().findFirst();
  }

  /** The rows in which a text column holds a text. */
  List<Row> where(SheetSpec spec, TextColumn column, String text) {
    return rows(spec).stream()
        .filter(row -> row.find(column).filter(text::equals).isPresent())
        .toList();
  }

  /** The first row in which a text column holds a text. */
  Optional<Row> first(SheetSpec spec, TextColumn column, Optional<String> text) {
    return text.flatMap(wanted -> where(spec, column, wanted).stream().findFirst());
  }
}
