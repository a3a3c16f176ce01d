package pilefolio.workbook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import pilefolio.findings.CellRef;
import pilefolio.model.Value;
import pilefolio.units.NumberText;

/** Puts together the inputs as they were read, in the order of the workbook. */
final class Echoes {
  private Echoes() {}

  static List<InputEcho> of(Book book, List<Row.Taken> defaults) {
    List<InputEcho> all = new ArrayList<>();
    for (SheetSpec spec : WorkbookSpec.SHEETS) {
      for (Row row : book.rows(spec)) {
        for (Column<?> column : spec.columns()) {
          entered(row, column, all);
        }
      }
    }
    for (Row.Taken one : defaults) {
      all.add(echo(one.row(), one.column(), one.cell(), one.value(), true));
    }
    Map<String, Integer> order = new HashMap<>();
    WorkbookSpec.SHEETS.forEach(spec -> order.put(spec.name(), order.size()));
    all.sort(
        Comparator.<InputEcho>comparingInt(echo -> order.get(echo.sheet()))
            .thenComparing(InputEcho::cell)
            .thenComparing(InputEcho::name));
    return all;
  }

  private static void entered(Row row, Column<?> column, List<InputEcho> all) {
    row.find(column)
        .ifPresent(value -> all.add(echo(row, column, row.place(column), value, false)));
  }

  private static InputEcho echo(
      Row row, Column<?> column, CellRef cell, Object value, boolean defaulted) {
    if (value instanceof Value number) {
      return new InputEcho(
          cell,
          row.subject(),
          column.name(),
          NumberText.significant(number.entered(), 12),
          number.unit().symbol(),
          OptionalDouble.of(number.si()),
          defaulted);
    }
    return new InputEcho(
        cell,
        row.subject(),
        column.name(),
        text(column, value),
        "",
        OptionalDouble.empty(),
        defaulted);
  }

  private static <T> String text(Column<T> column, Object value) {
    if (column instanceof ChoiceColumn<T> choice) {
      for (T answer : choice.answers()) {
        if (answer.equals(value)) {
          return choice.label().apply(answer);
        }
      }
    }
    return value.toString();
  }
}
