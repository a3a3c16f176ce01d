package pilefolio.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pilefolio.findings.CellRef;
import pilefolio.units.DisplaySystem;
import pilefolio.units.Unit;

/** The same job in SI and in US units is the same job. */
class UnitSystemsTest {
  private record Key(CellRef cell, String name) {}

  @ParameterizedTest
  @ValueSource(strings = {"ten-piles", "car-park-basement"})
  void theSameJobInUsUnitsGivesTheSameValues(String sample) throws IOException {
    ReadResult si = TextTables.sample(sample).read();
    ReadResult us = inUs(TextTables.sample(sample)).read();
    assertEquals(List.of(), us.findings());
    Map<Key, InputEcho> other = new HashMap<>();
    us.inputs().forEach(echo -> other.put(new Key(echo.cell(), echo.name()), echo));
    assertEquals(si.inputs().size(), us.inputs().size());
    int converted = 0;
    for (InputEcho echo : si.inputs()) {
      InputEcho same = other.get(new Key(echo.cell(), echo.name()));
      if (echo.si().isPresent()) {
        double value = echo.si().getAsDouble();
        assertEquals(value, same.si().getAsDouble(), 1e-12 * Math.abs(value) + 1e-15, echo.name());
        converted += echo.unit().equals(same.unit()) ? 0 : 1;
      } else {
        assertEquals(echo.text(), same.text());
      }
    }
    assertTrue(converted > 60, converted + " values were converted");
  }

  private static TextTables inUs(TextTables tables) {
    for (SheetSpec spec : WorkbookSpec.SHEETS) {
      SheetText text = tables.sheet(spec.name());
      for (Column<?> column : spec.columns()) {
        if (text != null && column instanceof NumberColumn number) {
          int at = spec.isForm() ? 1 : text.head().indexOf(column.name());
          for (List<String> row : text.rows()) {
            boolean wanted = !spec.isForm() || row.get(0).equals(column.name());
            if (wanted && at >= 0 && at < row.size() && !row.get(at).isEmpty()) {
              row.set(at, converted(number, row.get(at)));
            }
          }
        }
      }
    }
    return tables.in(DisplaySystem.US);
  }

  private static String converted(NumberColumn column, String text) {
    Unit us = column.fitting(column.usUnit()).orElseThrow();
    return Double.toString(us.fromSi(column.unit().toSi(Double.parseDouble(text))));
  }
}
