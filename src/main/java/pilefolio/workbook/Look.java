package pilefolio.workbook;

import java.util.EnumMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Cell styles of the workbook; the colour of a head tells whether its cells must be filled in. */
final class Look {
  private static final String INK = "1F2933";
  private static final String QUIET = "6B7780";
  private static final String RULE = "B8C0C6";
  static final String MISSING_FILL = "F7C9C0";
  static final String WARNING_FILL = "FBE7B2";

  private final XSSFWorkbook book;
  private final Map<Need, XSSFCellStyle> heads = new EnumMap<>(Need.class);
  private final XSSFCellStyle title;
  private final XSSFCellStyle unit;
  private final XSSFCellStyle unitOfItem;
  private final XSSFCellStyle plain;
  private final XSSFCellStyle text;
  private final XSSFCellStyle date;
  private final XSSFCellStyle example;
  private final XSSFCellStyle words;

  Look(XSSFWorkbook book) {
    this.book = book;
    title = style(font(14, true, false, INK));
    for (Need need : Need.values()) {
      heads.put(need, head(need));
    }
    unit = style(font(9, false, true, QUIET));
    unit.setAlignment(HorizontalAlignment.CENTER);
    unitOfItem = style(font(9, false, true, QUIET));
    unitOfItem.setAlignment(HorizontalAlignment.CENTER);
    unit.setBorderBottom(BorderStyle.MEDIUM);
    unit.setBottomBorderColor(color(RULE));
    plain = style(font(10, false, false, INK));
    text = style(font(10, false, false, INK));
    text.setDataFormat(book.createDataFormat().getFormat("@"));
    date = style(font(10, false, false, INK));
    date.setDataFormat(book.createDataFormat().getFormat("yyyy-mm-dd"));
    date.setAlignment(HorizontalAlignment.LEFT);
    example = style(font(10, false, true, QUIET));
    words = style(font(10, false, false, INK));
    words.setWrapText(true);
  }

  private XSSFCellStyle head(Need need) {
    XSSFCellStyle style = style(font(10, true, false, INK));
    style.setFillForegroundColor(color(fill(need)));
    style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
    style.setWrapText(true);
    style.setVerticalAlignment(VerticalAlignment.CENTER);
    style.setBorderTop(BorderStyle.THIN);
    style.setTopBorderColor(color(RULE));
    style.setBorderRight(BorderStyle.HAIR);
    style.setRightBorderColor(color(RULE));
    return style;
  }

  private static String fill(Need need) {
    return switch (need) {
      case REQUIRED -> "FBE3B5";
      case DEFAULTED -> "DCEBDD";
      case OPTIONAL -> "F0F2F4";
      case SIZED -> "D6E6F5";
    };
  }

  static XSSFColor color(String hex) {
    byte[] rgb = new byte[3];
    for (int i = 0; i < 3; i++) {
      rgb[i] = (byte) Integer.parseInt(hex.substring(2 * i, 2 * i + 2), 16);
    }
    return new XSSFColor(rgb);
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

  private XSSFCellStyle style(XSSFFont font) {
    XSSFCellStyle style = book.createCellStyle();
    style.setFont(font);
    style.setVerticalAlignment(VerticalAlignment.CENTER);
    return style;
  }

  XSSFCellStyle title() {
    return title;
  }

  XSSFCellStyle head(Column<?> column) {
    return heads.get(column.need());
  }

  XSSFCellStyle headOf(Need need) {
    return heads.get(need);
  }

  XSSFCellStyle unit() {
    return unit;
  }

  /** Unit beside the answer of a form. */
  XSSFCellStyle unitOfItem() {
    return unitOfItem;
  }

  XSSFCellStyle example() {
    return example;
  }

  XSSFCellStyle words() {
    return words;
  }

  /** Style of a cell to be filled in: ids stay text, so that 1.10 does not become 1.1. */
  XSSFCellStyle entry(Column<?> column) {
    if (column instanceof TextColumn) {
      return text;
    }
    return column instanceof DateColumn ? date : plain;
  }

  XSSFCellStyle plain() {
    return plain;
  }
}
