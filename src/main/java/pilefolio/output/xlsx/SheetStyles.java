package pilefolio.output.xlsx;

import org.apache.poi.common.usermodel.HyperlinkType;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.FontUnderline;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFHyperlink;
import org.apache.poi.xssf.usermodel.XSSFRichTextString;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The few looks of a cell, made once for each workbook. */
final class SheetStyles {
  private static final String INK = "1A1A1A";
  private static final String QUIET = "6B6B6B";
  private static final String ACCENT = "1F4E79";

  private final XSSFWorkbook book;
  private final XSSFFont lowered;

  final XSSFCellStyle title;
  final XSSFCellStyle heading;
  final XSSFCellStyle block;
  final XSSFCellStyle sheetName;
  final XSSFCellStyle text;
  final XSSFCellStyle wrapped;
  final XSSFCellStyle quiet;
  final XSSFCellStyle link;
  final XSSFCellStyle given;
  final XSSFCellStyle found;
  final XSSFCellStyle live;
  final XSSFCellStyle verdict;
  final XSSFCellStyle engine;
  final XSSFCellStyle entry;
  final XSSFCellStyle date;
  final XSSFCellStyle total;

  SheetStyles(XSSFWorkbook book) {
    this.book = book;
    lowered = font(10, false, false, INK);
    lowered.setTypeOffset(XSSFFont.SS_SUB);
    XSSFFont plain = font(10, false, false, INK);
    XSSFFont bold = font(10, true, false, INK);
    XSSFFont small = font(9, false, false, QUIET);
    title = style(font(14, true, false, INK));
    heading = style(bold);
    heading.setWrapText(true);
    heading.setVerticalAlignment(VerticalAlignment.BOTTOM);
    heading.setBorderBottom(BorderStyle.MEDIUM);
    block = style(font(11, true, false, ACCENT));
    block.setBorderTop(BorderStyle.THIN);
    sheetName = style(font(10, false, true, ACCENT));
    text = style(plain);
    wrapped = style(plain);
    wrapped.setWrapText(true);
    wrapped.setVerticalAlignment(VerticalAlignment.TOP);
    quiet = style(small);
    XSSFFont underlined = font(10, false, false, ACCENT);
    underlined.setUnderline(FontUnderline.SINGLE);
    link = style(underlined);
    given = filled(plain, "FFF4D1");
    given.setLocked(false);
    found = filled(plain, "DCE9F5");
    found.setLocked(false);
    live = style(plain);
    live.setAlignment(HorizontalAlignment.RIGHT);
    verdict = style(bold);
    verdict.setAlignment(HorizontalAlignment.RIGHT);
    engine = style(small);
    engine.setAlignment(HorizontalAlignment.RIGHT);
    entry = style(plain);
    entry.setLocked(false);
    entry.setBorderBottom(BorderStyle.HAIR);
    date = style(plain);
    date.setDataFormat(book.createDataFormat().getFormat("yyyy-mm-dd"));
    date.setAlignment(HorizontalAlignment.LEFT);
    total = style(bold);
    total.setBorderTop(BorderStyle.THIN);
  }

  private XSSFCellStyle filled(XSSFFont font, String fill) {
    XSSFCellStyle style = style(font);
    style.setFillForegroundColor(color(fill));
    style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
    style.setAlignment(HorizontalAlignment.RIGHT);
    return style;
  }

  private XSSFCellStyle style(XSSFFont font) {
    XSSFCellStyle style = book.createCellStyle();
    style.setFont(font);
    return style;
  }

  private XSSFFont font(int points, boolean bold, boolean italic, String ink) {
    XSSFFont font = book.createFont();
    font.setFontName("Arial");
    font.setFontHeightInPoints((short) points);
    font.setBold(bold);
    font.setItalic(italic);
    font.setColor(color(ink));
    return font;
  }

  private static XSSFColor color(String hex) {
    byte[] rgb = new byte[3];
    for (int i = 0; i < 3; i++) {
      rgb[i] = (byte) Integer.parseInt(hex.substring(2 * i, 2 * i + 2), 16);
    }
    return new XSSFColor(rgb);
  }

  /** A style like another with a fixed number of decimals. */
  XSSFCellStyle decimals(int count) {
    XSSFCellStyle style = book.createCellStyle();
    style.cloneStyleFrom(text);
    String format = count == 0 ? "0" : "0." + "0".repeat(count);
    style.setDataFormat(book.createDataFormat().getFormat(format));
    return style;
  }

  /** Writes a text. */
  static Cell put(Cell cell, String value, CellStyle style) {
    cell.setCellValue(value);
    cell.setCellStyle(style);
    return cell;
  }

  /** Writes a number. */
  static Cell put(Cell cell, double value, CellStyle style) {
    // A zero with a sign would be shown as −0.
    cell.setCellValue(value + 0.0);
    cell.setCellStyle(style);
    return cell;
  }

  /** Writes a live formula. */
  static Cell live(Cell cell, String formula, CellStyle style) {
    cell.setCellFormula(formula);
    cell.setCellStyle(style);
    return cell;
  }

  /** Writes a symbol with its index lowered. */
  void symbol(Cell cell, String symbol, CellStyle style) {
    int at = symbol.indexOf('_');
    if (at < 0) {
      put(cell, symbol.replace('\'', '′'), style);
      return;
    }
    String index = symbol.substring(at + 1);
    String primes = "";
    while (index.endsWith("'")) {
      index = index.substring(0, index.length() - 1);
      primes += "′";
    }
    if (index.startsWith("{")) {
      index = index.substring(1, index.length() - 1);
    }
    String stem = symbol.substring(0, at).replace('\'', '′') + primes;
    XSSFRichTextString rich = new XSSFRichTextString(stem + index.replace('\'', '′'));
    rich.applyFont(stem.length(), rich.length(), lowered);
    cell.setCellValue(rich);
    cell.setCellStyle(style);
  }

  /** Makes a cell lead to another of the workbook. */
  void link(Cell cell, String sheet, String address) {
    XSSFHyperlink to = book.getCreationHelper().createHyperlink(HyperlinkType.DOCUMENT);
    to.setAddress("'" + sheet + "'!" + address);
    cell.setHyperlink(to);
    cell.setCellStyle(link);
  }
}
