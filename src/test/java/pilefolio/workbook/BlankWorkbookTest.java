package pilefolio.workbook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import pilefolio.units.DisplaySystem;
import pilefolio.units.Units;

class BlankWorkbookTest {
  private static byte[] si;
  private static byte[] us;

  @BeforeAll
  static void build() throws IOException {
    si = WorkbookWriter.blank(DisplaySystem.SI, KnownNames.none());
    us = WorkbookWriter.blank(DisplaySystem.US, KnownNames.none());
  }

  @Test
  void sameCallSameBytes() throws IOException {
    assertArrayEquals(si, WorkbookWriter.blank(DisplaySystem.SI, KnownNames.none()));
  }

  /**
   * Nothing but emptiness may be wrong with an empty workbook: units, names, examples are right.
   */
  @Test
  void onlyEmptinessIsFound() throws IOException {
    for (byte[] blank : List.of(si, us)) {
      Set<String> codes = new TreeSet<>();
      WorkbookReader.read(blank, KnownNames.none()).findings().forEach(f -> codes.add(f.code()));
      assertEquals(Set.of("missing", "no-rows"), codes);
    }
  }

  @Test
  void everyColumnHasANoteAndEveryNumberAUnit() throws IOException {
    try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(us))) {
      for (SheetSpec spec : WorkbookSpec.SHEETS) {
        XSSFSheet sheet = book.getSheet(spec.name());
        for (int at = 0; at < spec.columns().size(); at++) {
          Column<?> column = spec.columns().get(at);
          var head = spec.isForm() ? sheet.getRow(2 + at).getCell(0) : sheet.getRow(1).getCell(at);
          assertEquals(column.name(), head.getStringCellValue());
          assertFalse(head.getCellComment().getString().getString().isBlank(), column.name());
          var unit = spec.isForm() ? sheet.getRow(2 + at).getCell(2) : sheet.getRow(2).getCell(at);
          if (column instanceof NumberColumn number) {
            assertTrue(
                number.fitting(Units.find(unit.getStringCellValue()).orElseThrow()).isPresent(),
                column.name());
          }
        }
      }
    }
  }

  @Test
  void choicesHaveDropDownsFromNamedLists() throws IOException {
    try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(si))) {
      var validations = book.getSheet("Ground").getDataValidations();
      assertTrue(
          validations.stream()
              .anyMatch(v -> "list_Drainage".equals(v.getValidationConstraint().getFormula1())));
      assertEquals(
          "Undrained",
          book.getSheet("Lists").getRow(2).getCell(column(book, "Drainage")).getStringCellValue());
      assertTrue(book.getSheet("Ground").getPaneInformation().isFreezePane());
      assertEquals(0, book.getSheet("Ground").getRepeatingRows().getFirstRow());
      assertEquals(2, book.getSheet("Ground").getRepeatingRows().getLastRow());
    }
  }

  private static int column(XSSFWorkbook book, String name) {
    for (var cell : book.getSheet("Lists").getRow(0)) {
      if (cell.getStringCellValue().equals(name)) {
        return cell.getColumnIndex();
      }
    }
    throw new AssertionError(name);
  }

  /** Filled with its own examples, the workbook is sound: they are possible and usual. */
  @Test
  void examplesAreWithinTheirLimits() {
    for (SheetSpec spec : WorkbookSpec.SHEETS) {
      for (Column<?> column : spec.columns()) {
        if (column instanceof NumberColumn number && !number.example().isEmpty()) {
          double value = number.unit().toSi(Double.parseDouble(number.example()));
          assertTrue(number.hard().contains(value), spec.name() + " " + column.name());
          assertTrue(number.usual().contains(value), spec.name() + " " + column.name());
        }
        if (column instanceof NumberColumn number && number.fallback().isPresent()) {
          double value = number.unit().toSi(number.fallback().getAsDouble());
          assertTrue(number.hard().contains(value), spec.name() + " " + column.name());
        }
        assertFalse(column.meaning().isBlank());
      }
    }
  }
}
