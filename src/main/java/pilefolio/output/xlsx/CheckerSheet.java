package pilefolio.output.xlsx;

import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import pilefolio.submittal.Answer;
import pilefolio.trace.Calculation;
import pilefolio.units.DisplaySystem;

/** The answers of one check on one sheet, one below the other. */
final class CheckerSheet {
  /** No further subject begins below this row; the record holds them all. */
  private static final int LAST_START = 400;

  private static final String[] HEADS = {
    "Symbol",
    "Meaning",
    "Formula",
    "Reference or source",
    "Live value",
    "Unit",
    "Engine",
    "Compared",
    "Checked by",
    "Comment"
  };
  private static final int[] WIDTHS = {11, 40, 46, 30, 14, 11, 14, 11, 11, 30};

  private final XSSFSheet sheet;
  private final SheetStyles styles;
  private final DisplaySystem system;

  CheckerSheet(XSSFSheet sheet, SheetStyles styles, DisplaySystem system) {
    this.sheet = sheet;
    this.styles = styles;
    this.system = system;
  }

  /**
   * Where an answer stands.
   *
   * @param answer the answer
   * @param sheet name of the sheet
   * @param firstRow its first row, counted from 1; 0 if it is not in the workbook
   * @param lastRow its last row
   * @param live true if its first row holds a live result
   */
  record Placed(Answer answer, String sheet, int firstRow, int lastRow, boolean live) {}

  /** Writes the answers; the governing one stands first. */
  List<Placed> write(List<Answer> answers) {
    for (int i = 0; i < WIDTHS.length; i++) {
      sheet.setColumnWidth(i, WIDTHS[i] * 256);
    }
    Answer first = answers.get(0);
    SheetStyles.put(
        sheet.createRow(0).createCell(0), first.number() + "  " + first.title(), styles.title);
    Row back = sheet.createRow(1);
    SheetStyles.put(back.createCell(0), "Contents", styles.link);
    styles.link(back.getCell(0), "Contents", "A1");
    Row heads = sheet.createRow(2);
    for (int i = 0; i < HEADS.length; i++) {
      SheetStyles.put(heads.createCell(i), HEADS[i], styles.heading);
    }
    sheet.createFreezePane(0, 3);
    List<Placed> placed = new ArrayList<>();
    int at = 3;
    int left = 0;
    for (Answer answer : answers) {
      if (at > LAST_START) {
        placed.add(new Placed(answer, "", 0, 0, false));
        left++;
        continue;
      }
      int start = at;
      at = answer(answer, at);
      boolean live = !answer.result().calculations().isEmpty() && !answer.derivation();
      placed.add(new Placed(answer, sheet.getSheetName(), start + 1, at, live));
      at++;
    }
    if (left > 0) {
      SheetStyles.put(
          sheet.createRow(at++).createCell(0),
          left + " further subjects are in record.json, every line in full.",
          styles.quiet);
    }
    Marks.colour(sheet, "E1:AZ" + (at + 1));
    protect();
    sheet.getPrintSetup().setLandscape(true);
    sheet.setFitToPage(true);
    sheet.getPrintSetup().setFitHeight((short) 0);
    sheet.setRepeatingRows(org.apache.poi.ss.util.CellRangeAddress.valueOf("1:3"));
    return placed;
  }

  /** Formulas are locked against slips, without a password. */
  private void protect() {
    sheet.enableLocking();
    sheet.lockFormatColumns(false);
    sheet.lockFormatRows(false);
    sheet.lockFormatCells(false);
  }

  private int answer(Answer answer, int start) {
    Row head = sheet.createRow(start);
    SheetStyles.put(head.createCell(0), answer.result().subject().label(), styles.block);
    for (int i = 1; i < HEADS.length; i++) {
      head.createCell(i).setCellStyle(styles.block);
    }
    if (answer.result().calculations().isEmpty()) {
      SheetStyles.put(head.createCell(6), answer.words(), styles.verdict);
      SheetStyles.put(
          sheet.createRow(start + 1).createCell(1), answer.verdict().reason(), styles.text);
      return start + 2;
    }
    LiveCalculation live = new LiveCalculation(sheet, styles, system, start + 1);
    for (Calculation calculation : answer.result().calculations()) {
      live.write(calculation);
    }
    if (!answer.derivation()) {
      List<String> results = live.results();
      String formula =
          results.isEmpty()
              ? "\"satisfied\""
              : "IF(AND("
                  + String.join(",", results.stream().map(r -> r + "=\"satisfied\"").toList())
                  + "),\"satisfied\",\"not satisfied\")";
      SheetStyles.live(head.createCell(4), formula, styles.verdict);
    }
    SheetStyles.put(head.createCell(6), answer.words(), styles.verdict);
    if (!answer.derivation()) {
      int row = start + 1;
      SheetStyles.live(
          head.createCell(7),
          "IF(E" + row + "=G" + row + ",\"" + Marks.AGREES + "\",\"" + Marks.DIFFERS + "\")",
          styles.verdict);
    }
    return live.nextRow();
  }
}
