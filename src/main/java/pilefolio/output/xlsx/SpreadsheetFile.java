package pilefolio.output.xlsx;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Date;
import java.util.HashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.apache.poi.ooxml.POIXMLProperties.CoreProperties;
import org.apache.poi.ss.util.WorkbookUtil;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import pilefolio.workbook.FixedZip;
import pilefolio.workbook.QuietLog;

/**
 * A workbook in the making: sheets with valid and different names, and the same bytes each time.
 */
final class SpreadsheetFile {
  private static final int LONGEST_NAME = 31;

  private final XSSFWorkbook book;
  private final SheetStyles styles;
  private final Set<String> names = new HashSet<>();

  /**
   * An empty workbook.
   *
   * @param title title in its properties
   * @param date date in its properties
   */
  SpreadsheetFile(String title, LocalDate date) {
    QuietLog.set();
    book = new XSSFWorkbook();
    styles = new SheetStyles(book);
    Optional<Date> when = Optional.of(Date.from(date.atStartOfDay().toInstant(ZoneOffset.UTC)));
    CoreProperties core = book.getProperties().getCoreProperties();
    core.setCreator("");
    core.setTitle(title);
    core.setCreated(when);
    core.setModified(when);
  }

  XSSFWorkbook book() {
    return book;
  }

  SheetStyles styles() {
    return styles;
  }

  /** A new sheet; its name is cut and numbered where a spreadsheet would not take it. */
  XSSFSheet sheet(String wanted) {
    String safe = WorkbookUtil.createSafeSheetName(wanted.replace("'", "")).strip();
    String name = safe;
    for (int again = 2; !names.add(name.toLowerCase(Locale.ROOT)); again++) {
      String end = " (" + again + ")";
      name = safe.substring(0, Math.min(safe.length(), LONGEST_NAME - end.length())) + end;
    }
    return book.createSheet(name);
  }

  /** The file; the workbook is closed. */
  byte[] bytes() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (book) {
      book.write(bytes);
      return FixedZip.repacked(bytes.toByteArray());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
