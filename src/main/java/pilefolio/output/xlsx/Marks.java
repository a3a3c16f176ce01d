package pilefolio.output.xlsx;

import org.apache.poi.ss.usermodel.ComparisonOperator;
import org.apache.poi.ss.usermodel.ConditionalFormattingRule;
import org.apache.poi.ss.usermodel.IndexedColors;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFSheetConditionalFormatting;

/** Colours the words that ask for attention; the words stay. */
final class Marks {
  static final String AGREES = "agrees";
  static final String DIFFERS = "differs";

  private Marks() {}

  static void colour(XSSFSheet sheet, String range) {
    XSSFSheetConditionalFormatting formats = sheet.getSheetConditionalFormatting();
    ConditionalFormattingRule[] rules = new ConditionalFormattingRule[2];
    String[] words = {DIFFERS, "not satisfied"};
    for (int i = 0; i < words.length; i++) {
      rules[i] =
          formats.createConditionalFormattingRule(ComparisonOperator.EQUAL, "\"" + words[i] + "\"");
      rules[i].createFontFormatting().setFontColorIndex(IndexedColors.DARK_RED.getIndex());
    }
    formats.addConditionalFormatting(
        new CellRangeAddress[] {CellRangeAddress.valueOf(range)}, rules);
  }
}
