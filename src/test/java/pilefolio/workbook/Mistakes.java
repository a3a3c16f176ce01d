package pilefolio.workbook;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The small sample with planted mistakes, and what must be found in it. */
final class Mistakes {
  /** One line of the source. */
  record Planted(String cell, String edit, String code, String found) {}

  private Mistakes() {}

  static List<Planted> planted() throws IOException {
    List<Planted> all = new ArrayList<>();
    for (String line :
        Files.readAllLines(Path.of("src/test/resources/samples/with-mistakes.txt"))) {
      if (!line.isBlank() && !line.startsWith("//")) {
        String[] parts = line.split("\\|", -1);
        all.add(
            new Planted(parts[0].strip(), parts[1].strip(), parts[2].strip(), parts[3].strip()));
      }
    }
    return all;
  }

  static byte[] workbook() throws IOException {
    byte[] good = TextTables.sample("ten-piles").bytes();
    try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(good))) {
      for (Planted one : planted()) {
        if (!one.edit().isEmpty()) {
          spoil(book, one.cell(), one.edit());
        }
      }
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      book.write(bytes);
      return FixedZip.repacked(bytes.toByteArray());
    }
  }

  /** Puts one mistake into a workbook. */
  static void spoil(XSSFWorkbook book, String address, String edit) {
    int mark = address.indexOf('!');
    XSSFSheet sheet = book.getSheet(address.substring(0, mark));
    CellReference at = new CellReference(address.substring(mark + 1));
    XSSFRow row =
        sheet.getRow(at.getRow()) == null
            ? sheet.createRow(at.getRow())
            : sheet.getRow(at.getRow());
    XSSFCell old = row.getCell(at.getCol());
    if (edit.equals("!hide row")) {
      row.setZeroHeight(true);
    } else if (edit.startsWith("!merge ")) {
      sheet.addMergedRegion(CellRangeAddress.valueOf(edit.substring(7)));
    } else if (edit.equals("!delete")) {
      row.removeCell(old);
    } else if (edit.equals("!hide column")) {
      sheet.setColumnHidden(at.getCol(), true);
    } else if (edit.equals("!empty")) {
      old.setBlank();
    } else {
      XSSFCell cell = old == null ? row.createCell(at.getCol()) : old;
      write(cell, edit);
    }
  }

  private static void write(XSSFCell cell, String edit) {
    if (edit.equals("!error")) {
      cell.setCellFormula("1/0");
      cell.setCellErrorValue(FormulaError.DIV0);
    } else if (edit.matches("-?\\d+(\\.\\d+)?")) {
      cell.setCellValue(Double.parseDouble(edit));
    } else if (edit.matches("\\d{4}-\\d\\d-\\d\\d")) {
      cell.setCellValue(java.time.LocalDate.parse(edit));
    } else {
      // A formula set on a cell that holds a number would keep the number as its saved value.
      cell.setBlank();
      CellWriter.write(cell, ProjectSheet.TITLE, edit);
    }
  }
}
