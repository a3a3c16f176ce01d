package pilefolio.output.xlsx;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pilefolio.output.SampleSubmittal;
import pilefolio.submittal.Submittal;
import pilefolio.units.DisplaySystem;

class CheckerWorkbookTest {
  private static final String MADE = "90.1 made-question";

  private static XSSFWorkbook open(byte[] file) throws IOException {
    return new XSSFWorkbook(new ByteArrayInputStream(file));
  }

  @ParameterizedTest
  @CsvSource({
    "ten-piles, SI",
    "ten-piles, US",
    "car-park-basement, SI",
    "river-street-pump-station, US",
    "river-street-pump-station, SI"
  })
  void opensWithItsValuesAndEveryLineAgreesWithTheEngine(String sample, DisplaySystem system)
      throws IOException {
    int compared = 0;
    try (XSSFWorkbook book = open(CheckerWorkbook.write(SampleSubmittal.of(sample, system)))) {
      for (Sheet sheet : book) {
        for (Row row : sheet) {
          for (Cell cell : row) {
            if (cell.getCellType() != CellType.FORMULA) {
              continue;
            }
            String where = sheet.getSheetName() + "!" + cell.getAddress() + " " + cell;
            assertTrue(((XSSFCell) cell).getRawValue() != null, where + " has no value");
            assertNotEquals(CellType.ERROR, cell.getCachedFormulaResultType(), where);
            if (cell.getCachedFormulaResultType() == CellType.STRING) {
              assertNotEquals("differs", cell.getStringCellValue(), where);
              compared += cell.getStringCellValue().equals("agrees") ? 1 : 0;
            }
          }
        }
      }
    }
    assertTrue(compared > 60, "only " + compared + " lines compared");
  }

  @Test
  void liveValuesEqualTheEnginesNumbers() throws IOException {
    try (XSSFWorkbook book = open(CheckerWorkbook.write(SampleSubmittal.in(DisplaySystem.US)))) {
      int numbers = 0;
      for (Row row : book.getSheet(MADE)) {
        Cell live = row.getCell(LiveCalculation.VALUE);
        Cell engine = row.getCell(LiveCalculation.ENGINE);
        if (live != null
            && live.getCellType() == CellType.FORMULA
            && live.getCachedFormulaResultType() == CellType.NUMERIC
            && engine.getCellType() == CellType.NUMERIC
            && row.getCell(LiveCalculation.UNIT) != null) {
          double wanted = engine.getNumericCellValue();
          assertEquals(wanted, live.getNumericCellValue(), 1e-9 * Math.abs(wanted) + 1e-12);
          numbers++;
        }
      }
      assertTrue(numbers > 15, "only " + numbers);
    }
  }

  @Test
  void aChangedInputReachesTheVerdictAndTheSheetBelow() throws IOException {
    try (XSSFWorkbook book = open(CheckerWorkbook.write(SampleSubmittal.in(DisplaySystem.SI)))) {
      XSSFSheet sheet = book.getSheet(MADE);
      Row head = row(sheet, 0, "run A, stage 2");
      assertEquals("satisfied", head.getCell(LiveCalculation.VALUE).getStringCellValue());
      Row strength = below(sheet, head, 1, "undrained strength");
      Cell given = strength.getCell(LiveCalculation.VALUE);
      assertEquals(CellType.NUMERIC, given.getCellType());
      assertTrue(!given.getCellStyle().getLocked(), "an input must be free to change");
      Row adhesion = below(sheet, head, 1, "adhesion factor");
      assertTrue(adhesion.getCell(LiveCalculation.VALUE).getCellStyle().getLocked());
      given.setCellValue(160);
      evaluate(book);
      // Above 150 kPa the last case of the piecewise factor holds.
      assertEquals(0.45, adhesion.getCell(LiveCalculation.VALUE).getNumericCellValue(), 1e-12);
      assertEquals("differs", adhesion.getCell(LiveCalculation.FLAG).getStringCellValue());
      given.setCellValue(1);
      evaluate(book);
      assertEquals("not satisfied", head.getCell(LiveCalculation.VALUE).getStringCellValue());
      Row surcharge = below(sheet, head, 1, "surcharge");
      Row onward = below(sheet, head, 1, "demand from above");
      double before = onward.getCell(LiveCalculation.VALUE).getNumericCellValue();
      surcharge.getCell(LiveCalculation.VALUE).setCellValue(100);
      evaluate(book);
      assertTrue(onward.getCell(LiveCalculation.VALUE).getNumericCellValue() > 2 * before);
    }
  }

  private static void evaluate(XSSFWorkbook book) {
    book.getCreationHelper().createFormulaEvaluator().evaluateAll();
  }

  private static Row row(Sheet sheet, int column, String text) {
    for (Row row : sheet) {
      Cell cell = row.getCell(column);
      if (cell != null
          && cell.getCellType() == CellType.STRING
          && cell.getStringCellValue().equals(text)) {
        return row;
      }
    }
    throw new AssertionError("no " + text);
  }

  private static Row below(Sheet sheet, Row from, int column, String text) {
    for (int i = from.getRowNum() + 1; i <= sheet.getLastRowNum(); i++) {
      Row row = sheet.getRow(i);
      if (row != null
          && row.getCell(column) != null
          && row.getCell(column).getCellType() == CellType.STRING
          && row.getCell(column).getStringCellValue().equals(text)) {
        return row;
      }
    }
    throw new AssertionError("no " + text + " below row " + from.getRowNum());
  }

  @Test
  void contentsLeadToEveryAnswerAndSheetNamesAreValid() throws IOException {
    Submittal submittal = SampleSubmittal.in(DisplaySystem.SI);
    try (XSSFWorkbook book = open(CheckerWorkbook.write(submittal))) {
      Set<String> names = new HashSet<>();
      for (Sheet sheet : book) {
        assertTrue(sheet.getSheetName().length() <= 31, sheet.getSheetName());
        assertTrue(names.add(sheet.getSheetName().toLowerCase(Locale.ROOT)));
      }
      XSSFSheet contents = book.getSheet("Contents");
      int links = 0;
      for (Row row : contents) {
        Cell cell = row.getCell(1);
        if (cell != null && cell.getHyperlink() != null) {
          String to = cell.getHyperlink().getAddress();
          String name = to.substring(1, to.lastIndexOf('\''));
          int line = Integer.parseInt(to.substring(to.lastIndexOf('!') + 2));
          assertEquals(
              row.getCell(2).getStringCellValue(),
              book.getSheet(name).getRow(line - 1).getCell(0).getStringCellValue());
          links++;
        }
      }
      assertTrue(links >= 4, "only " + links);
    }
  }

  @Test
  void theSameSubmittalGivesTheSameBytes() {
    assertArrayEquals(
        CheckerWorkbook.write(SampleSubmittal.in(DisplaySystem.SI)),
        CheckerWorkbook.write(SampleSubmittal.in(DisplaySystem.SI)));
  }

  /** A second program works the file out that has no values; skipped where it is not installed. */
  @Test
  void anotherSpreadsheetProgramFindsTheSameValues(@TempDir Path folder) throws Exception {
    Submittal submittal = SampleSubmittal.in(DisplaySystem.US);
    Path in = Files.write(folder.resolve("in.xlsx"), CheckerWorkbook.withoutValues(submittal));
    Path out = Files.createDirectory(folder.resolve("out"));
    Process office;
    try {
      office =
          new ProcessBuilder(
                  "soffice",
                  "-env:UserInstallation=" + folder.resolve("profile").toUri(),
                  "--headless",
                  "--convert-to",
                  "xlsx",
                  "--outdir",
                  out.toString(),
                  in.toString())
              .redirectErrorStream(true)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .start();
    } catch (IOException e) {
      Assumptions.abort("no second spreadsheet program here");
      return;
    }
    assertTrue(office.waitFor(120, TimeUnit.SECONDS), "the program did not end");
    int numbers = 0;
    try (XSSFWorkbook theirs = new XSSFWorkbook(Files.newInputStream(out.resolve("in.xlsx")));
        XSSFWorkbook ours = open(CheckerWorkbook.write(submittal))) {
      for (Sheet sheet : ours) {
        for (Row row : sheet) {
          for (Cell cell : row) {
            if (cell.getCellType() != CellType.FORMULA) {
              continue;
            }
            Cell other =
                theirs
                    .getSheet(sheet.getSheetName())
                    .getRow(row.getRowNum())
                    .getCell(cell.getColumnIndex());
            String where = sheet.getSheetName() + "!" + cell.getAddress() + " " + cell;
            if (cell.getCachedFormulaResultType() == CellType.NUMERIC) {
              double value = cell.getNumericCellValue();
              // What is left of nearly equal numbers is rounded to zero by one, not by the other.
              double tolerance = 1e-9 * Math.abs(value) + 1e-9;
              assertEquals(value, other.getNumericCellValue(), tolerance, where);
              numbers++;
            } else {
              assertEquals(cell.getStringCellValue(), other.getStringCellValue(), where);
            }
          }
        }
      }
    }
    assertTrue(numbers > 60, "only " + numbers);
  }
}
