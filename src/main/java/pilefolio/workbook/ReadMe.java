package pilefolio.workbook;

import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import pilefolio.units.DisplaySystem;

/** The first sheet: how to fill in the workbook, what the colours mean, what the sheets hold. */
final class ReadMe {
  private static final int WIDTH_UNIT = 256;
  private static final int CHARACTERS_A_LINE = 96;
  private static final float LINE = 15;

  private final Look look;
  private final DisplaySystem system;

  ReadMe(Look look, DisplaySystem system) {
    this.look = look;
    this.system = system;
  }

  void write(XSSFSheet sheet) {
    sheet.setColumnWidth(0, 26 * WIDTH_UNIT);
    sheet.setColumnWidth(1, 96 * WIDTH_UNIT);
    sheet.setDisplayGridlines(false);
    int at = 0;
    XSSFCell title = sheet.createRow(at++).createCell(0);
    title.setCellValue("Secant wall: input for calculation package and method statement");
    title.setCellStyle(look.title());
    at++;
    for (String[] line : instructions()) {
      line(sheet, at++, line[0], line[1]);
    }
    at++;
    for (Need need : Need.values()) {
      XSSFRow row = line(sheet, at++, heading(need), meaning(need));
      row.getCell(0).setCellStyle(look.headOf(need));
    }
    at++;
    for (SheetSpec spec : WorkbookSpec.SHEETS) {
      line(sheet, at++, spec.name(), spec.purpose());
    }
    sheet.getPrintSetup().setLandscape(true);
    sheet.setFitToPage(true);
    sheet.getPrintSetup().setFitHeight((short) 0);
  }

  private List<String[]> instructions() {
    return List.of(
        new String[] {"Names and order", "Do not rename sheets or heads. Columns may be moved."},
        new String[] {
          "Units",
          "The row below the heads holds the unit of each column. This workbook begins with "
              + (system == DisplaySystem.US ? "US" : "SI")
              + " units; any fitting unit may be typed in its place, and the two may be mixed."
        },
        new String[] {
          "Levels",
          "Levels are elevations in one datum, positive upwards. Depths are asked for nowhere."
        },
        new String[] {"Examples", "Rows that begin with e.g. are examples and are not read."},
        new String[] {
          "Empty cells",
          "An empty cell takes the default in the note on its head; the documents list it as an"
              + " assumption."
        },
        new String[] {"Notes of your own", "A sheet called Notes is yours; it is not read."});
  }

  private static String heading(Need need) {
    return switch (need) {
      case REQUIRED -> "Required";
      case DEFAULTED -> "Default if empty";
      case OPTIONAL -> "Optional";
      case SIZED -> "Sized if empty";
    };
  }

  private static String meaning(Need need) {
    return switch (need) {
      case REQUIRED -> "Must be filled in.";
      case DEFAULTED -> "May be empty; then the stated default holds.";
      case OPTIONAL -> "May be empty; a check that needs it is then reported as not checked.";
      case SIZED -> "May be empty; the engine then finds the least that satisfies every check.";
    };
  }

  private XSSFRow line(XSSFSheet sheet, int at, String left, String right) {
    XSSFRow row = sheet.createRow(at);
    XSSFCell name = row.createCell(0);
    name.setCellValue(left);
    name.setCellStyle(look.words());
    XSSFCell text = row.createCell(1);
    text.setCellValue(right);
    text.setCellStyle(look.words());
    row.setHeightInPoints(right.length() > CHARACTERS_A_LINE ? 2 * LINE : LINE);
    return row;
  }
}
