package pilefolio.workbook;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import org.apache.poi.xssf.usermodel.XSSFCell;

/** Writes one text into a cell as what its column wants. */
final class CellWriter {
  private static final String SAVED = "->";

  private CellWriter() {}

  static void write(XSSFCell cell, Column<?> column, String text) {
    if (text.isEmpty()) {
      return;
    }
    if (text.startsWith("'")) {
      cell.setCellValue(text.substring(1));
    } else if (text.startsWith("=")) {
      formula(cell, text.substring(1));
    } else if (column instanceof NumberColumn) {
      number(cell, text);
    } else if (column instanceof DateColumn) {
      date(cell, text);
    } else {
      cell.setCellValue(text);
    }
  }

  private static void formula(XSSFCell cell, String text) {
    int saved = text.indexOf(SAVED);
    cell.setCellFormula((saved < 0 ? text : text.substring(0, saved)).strip());
    if (saved >= 0) {
      number(cell, text.substring(saved + SAVED.length()).strip());
    }
  }

  private static void number(XSSFCell cell, String text) {
    try {
      cell.setCellValue(Double.parseDouble(text));
    } catch (NumberFormatException words) {
      cell.setCellValue(text);
    }
  }

  private static void date(XSSFCell cell, String text) {
    try {
      cell.setCellValue(LocalDate.parse(text));
    } catch (DateTimeParseException words) {
      cell.setCellValue(text);
    }
  }
}
