package pilefolio.workbook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pilefolio.findings.CellRef;
import pilefolio.model.Assumption;
import pilefolio.units.DisplaySystem;

/** Defaults taken while what the user described was put together. */
final class Defaults {
  private record Key(CellRef cell, Column<?> column) {}

  private final Map<Key, Row.Taken> taken = new LinkedHashMap<>();

  void note(Row.Taken one) {
    taken.putIfAbsent(new Key(one.cell(), one.column()), one);
  }

  List<Row.Taken> taken() {
    return new ArrayList<>(taken.values());
  }

  List<Assumption> assumptions(DisplaySystem documents) {
    return taken().stream()
        .map(
            one ->
                new Assumption(
                    one.cell(),
                    one.column().name(),
                    one.row().subject(),
                    text(one.column(), documents)))
        .toList();
  }

  private static String text(Column<?> column, DisplaySystem documents) {
    return column instanceof NumberColumn number
        ? number.standardFor(documents)
        : column.standardText();
  }
}
