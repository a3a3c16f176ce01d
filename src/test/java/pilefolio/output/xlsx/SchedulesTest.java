package pilefolio.output.xlsx;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import pilefolio.analysis.sequence.Programme;
import pilefolio.analysis.sequence.Programme.PlannedPile;
import pilefolio.checks.Job;
import pilefolio.checks.sequence.Programmes;
import pilefolio.model.Pile;
import pilefolio.model.WallRun;
import pilefolio.output.SampleSubmittal;
import pilefolio.submittal.Submittal;
import pilefolio.units.DisplaySystem;

class SchedulesTest {

  private static XSSFWorkbook open(byte[] file) throws IOException {
    return new XSSFWorkbook(new ByteArrayInputStream(file));
  }

  private static List<Pile> piles(Submittal submittal) {
    List<Pile> piles = new ArrayList<>();
    for (WallRun run : submittal.job().submission().runs()) {
      piles.addAll(run.layout().piles());
    }
    return piles;
  }

  /** Two piles a day from the last to the first. */
  private static Programme programme(Submittal submittal) {
    List<Pile> piles = piles(submittal);
    List<PlannedPile> planned = new ArrayList<>();
    for (int i = 0; i < piles.size(); i++) {
      int day = i / 2;
      planned.add(
          new PlannedPile(
              i + 1,
              piles.get(piles.size() - 1 - i).mark(),
              day,
              LocalDate.of(2027, 3, 1).plusDays(day),
              "rig",
              i % 2 + 1,
              240.0 * (i % 2)));
    }
    return new Programme(planned, false, 1);
  }

  /** The same answers with another programme. */
  private static Submittal with(
      Submittal submittal, Optional<Programme> programme, String missing) {
    Job job = new Job(submittal.job().submission(), submittal.job().basis());
    job.shared(
        Programmes.class,
        Programmes.class,
        j -> new Programmes(Optional.empty(), programme.map(p -> p), missing, Map.of()));
    return new Submittal(job, submittal.answers(), submittal.inputs(), submittal.engine());
  }

  private static int column(XSSFSheet sheet, String name) {
    for (Row row : sheet) {
      for (Cell cell : row) {
        if (cell.getCellType() == CellType.STRING && cell.getStringCellValue().equals(name)) {
          return cell.getColumnIndex();
        }
      }
    }
    throw new AssertionError("no column " + name);
  }

  private static Row row(XSSFSheet sheet, int column, String text) {
    for (Row row : sheet) {
      Cell cell = row.getCell(column);
      if (cell != null
          && cell.getCellType() == CellType.STRING
          && cell.getStringCellValue().equals(text)) {
        return row;
      }
    }
    throw new AssertionError("no row " + text);
  }

  @Test
  void everyPileHasItsPlaceLevelsAndDay() throws IOException {
    Submittal submittal = SampleSubmittal.in(DisplaySystem.SI);
    List<Pile> piles = piles(submittal);
    Pile last = piles.get(piles.size() - 1);
    WallRun run =
        submittal.job().submission().runs().stream()
            .filter(r -> r.id().equals(last.run()))
            .findFirst()
            .orElseThrow();
    try (XSSFWorkbook book =
        open(Schedules.write(with(submittal, Optional.of(programme(submittal)), "")))) {
      XSSFSheet sheet = book.getSheet("Pile schedule");
      Row row = row(sheet, 0, last.mark());
      assertEquals(last.east(), number(row, column(sheet, "Easting")), 1e-9);
      assertEquals(run.levels().platform().si(), number(row, column(sheet, "Platform")), 1e-9);
      assertEquals(1, number(row, column(sheet, "Order")));
      assertEquals(
          LocalDate.of(2027, 3, 1),
          row.getCell(column(sheet, "Planned")).getLocalDateTimeCellValue().toLocalDate());
      double drilled = number(row, column(sheet, "Drilled length"));
      double toe = number(row, column(sheet, "Toe"));
      assertEquals(run.levels().platform().si() - toe, drilled, 1e-9);
      Row total = row(sheet, 0, "Total");
      assertTrue(number(total, column(sheet, "Drilled length")) > drilled * piles.size() / 2);
      XSSFSheet days = book.getSheet("Programme");
      assertEquals(
          last.mark(), days.getRow(firstRow(days)).getCell(column(days, "Pile")).toString());
    }
  }

  @Test
  void concreteByDayAddsUpToTheQuantities() throws IOException {
    Submittal submittal = SampleSubmittal.in(DisplaySystem.SI);
    Optional<Programme> programme = Optional.of(programme(submittal));
    try (XSSFWorkbook book = open(Schedules.write(with(submittal, programme, "")))) {
      XSSFSheet days = book.getSheet("Concrete by day");
      XSSFSheet quantities = book.getSheet("Quantities");
      XSSFSheet schedule = book.getSheet("Pile schedule");
      double byDay = number(row(days, 0, "Total"), column(days, "Concrete to order"));
      double byRun = number(row(quantities, 0, "Total"), column(quantities, "Concrete, all"));
      double byPile = number(row(schedule, 0, "Total"), column(schedule, "Concrete to order"));
      assertTrue(byDay > 1, "no concrete");
      assertEquals(byRun, byDay, 1e-9 * byRun);
      assertEquals(byRun, byPile, 1e-9 * byRun);
      assertEquals(
          piles(submittal).size(), number(row(days, 0, "Total"), column(days, "Piles")), 0);
    }
  }

  @Test
  void withoutAProgrammeTheReasonStandsInItsPlace() throws IOException {
    Submittal submittal = SampleSubmittal.in(DisplaySystem.US);
    try (XSSFWorkbook book =
        open(Schedules.write(with(submittal, Optional.empty(), "A crew has no shift.")))) {
      row(book.getSheet("Programme"), 0, "No programme: A crew has no shift.");
      XSSFSheet sheet = book.getSheet("Pile schedule");
      assertEquals("ft", sheet.getRow(firstRow(sheet) - 1).getCell(3).getStringCellValue());
    }
  }

  @Test
  void beamsHaveTheirLength() throws IOException {
    Submittal submittal = SampleSubmittal.in(DisplaySystem.SI);
    try (XSSFWorkbook book = open(Schedules.write(with(submittal, Optional.empty(), "None.")))) {
      XSSFSheet sheet = book.getSheet("Beams");
      Row first = sheet.getRow(firstRow(sheet));
      Cell length = first.getCell(column(sheet, "Length"));
      if (length.getCellType() == CellType.NUMERIC) {
        double top = number(first, column(sheet, "Top"));
        double foot = number(first, column(sheet, "Foot"));
        assertEquals(top - foot, length.getNumericCellValue(), 1e-9);
      } else {
        assertEquals("not checked", length.getStringCellValue());
      }
    }
  }

  @Test
  void theSameSubmittalGivesTheSameBytes() {
    Submittal submittal = SampleSubmittal.in(DisplaySystem.SI);
    Optional<Programme> programme = Optional.of(programme(submittal));
    assertArrayEquals(
        Schedules.write(with(submittal, programme, "")),
        Schedules.write(with(submittal, programme, "")));
  }

  private static int firstRow(XSSFSheet sheet) {
    return sheet.getPaneInformation().getHorizontalSplitTopRow();
  }

  private static double number(Row row, int column) {
    return row.getCell(column).getNumericCellValue();
  }
}
