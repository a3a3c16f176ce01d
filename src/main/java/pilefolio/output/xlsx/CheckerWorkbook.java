package pilefolio.output.xlsx;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import pilefolio.output.xlsx.CheckerSheet.Placed;
import pilefolio.submittal.Answer;
import pilefolio.submittal.Submittal;

/**
 * The checker's workbook: the lines of the calculation package as live formulas, beside the
 * engine's numbers.
 *
 * <p>One sheet a check, the governing subject first. Given values stand in coloured cells that may
 * be changed; every other value follows from them, unrounded. The file opens with its values and is
 * worked out anew by the program that opens it.
 */
public final class CheckerWorkbook {
  private final Submittal submittal;
  private final SpreadsheetFile file;
  private final SheetStyles styles;

  private CheckerWorkbook(Submittal submittal) {
    this.submittal = submittal;
    this.file =
        new SpreadsheetFile(
            "Checker's workbook, " + submittal.job().submission().project().title(),
            submittal.job().submission().project().date());
    this.styles = file.styles();
  }

  /** The workbook with its values, as a file. */
  public static byte[] write(Submittal submittal) {
    CheckerWorkbook workbook = new CheckerWorkbook(submittal);
    workbook.fill();
    workbook.file.book().getCreationHelper().createFormulaEvaluator().evaluateAll();
    workbook.file.book().setForceFormulaRecalculation(true);
    return workbook.file.bytes();
  }

  /** The workbook without values, so that whoever opens it must work them out. */
  static byte[] withoutValues(Submittal submittal) {
    CheckerWorkbook workbook = new CheckerWorkbook(submittal);
    workbook.fill();
    return workbook.file.bytes();
  }

  private void fill() {
    XSSFSheet contents = file.sheet("Contents");
    Map<String, List<Answer>> byCheck = new LinkedHashMap<>();
    for (Answer answer : submittal.answers()) {
      byCheck.computeIfAbsent(answer.checkId(), id -> new ArrayList<>()).add(answer);
    }
    List<Placed> placed = new ArrayList<>();
    for (List<Answer> answers : byCheck.values()) {
      Answer first = answers.get(0);
      XSSFSheet sheet = file.sheet(first.number() + " " + first.checkId());
      placed.addAll(new CheckerSheet(sheet, styles, submittal.system()).write(answers));
    }
    contents(contents, placed);
  }

  private void contents(XSSFSheet sheet, List<Placed> placed) {
    int[] widths = {9, 46, 44, 18, 18, 14, 14, 40};
    for (int i = 0; i < widths.length; i++) {
      sheet.setColumnWidth(i, widths[i] * 256);
    }
    SheetStyles.put(
        sheet.createRow(0).createCell(0),
        "Checker’s workbook: " + submittal.job().submission().project().title(),
        styles.title);
    String[] words = {
      "Every line of the calculations as a live formula, beside the number of the documents.",
      "Yellow cells are inputs and blue cells are results of numerical methods: change them to try"
          + " other numbers. Results of numerical methods do not follow a change of inputs.",
      "“differs” means that a live value and the engine’s number part by more than one in a"
          + " million.",
      "Made by version "
          + submittal.engine().version()
          + " from "
          + submittal.engine().workbook()
          + ", SHA-256 "
          + submittal.engine().sha256()
          + ". A check by this workbook is no substitute for an independent check of the design."
    };
    int at = 1;
    for (String line : words) {
      SheetStyles.put(sheet.createRow(at++).createCell(0), line, styles.quiet);
    }
    at++;
    String[] heads = {
      "No.", "Check", "Subject", "Engine", "Live", "Lines that differ", "Checked by", "Comment"
    };
    Row head = sheet.createRow(at++);
    for (int i = 0; i < heads.length; i++) {
      SheetStyles.put(head.createCell(i), heads[i], styles.heading);
    }
    sheet.createFreezePane(0, at);
    for (Placed one : placed) {
      row(sheet.createRow(at++), one);
    }
    Marks.colour(sheet, "D1:F" + at);
    sheet.getPrintSetup().setLandscape(true);
    sheet.setFitToPage(true);
    sheet.getPrintSetup().setFitHeight((short) 0);
  }

  private void row(Row row, Placed one) {
    Answer answer = one.answer();
    SheetStyles.put(row.createCell(0), answer.number(), styles.text);
    SheetStyles.put(row.createCell(1), answer.title(), styles.text);
    SheetStyles.put(row.createCell(2), answer.result().subject().label(), styles.text);
    SheetStyles.put(row.createCell(3), answer.words(), styles.text);
    if (one.firstRow() > 0) {
      styles.link(row.getCell(1), one.sheet(), "A" + one.firstRow());
      String prefix = "'" + one.sheet() + "'!";
      if (one.live()) {
        SheetStyles.live(row.createCell(4), prefix + "E" + one.firstRow(), styles.text);
      }
      SheetStyles.live(
          row.createCell(5),
          "COUNTIF(" + prefix + "E" + one.firstRow() + ":AZ" + one.lastRow() + ",\"differs\")",
          styles.text);
    } else {
      SheetStyles.put(row.createCell(4), "in record.json only", styles.quiet);
    }
    row.createCell(6).setCellStyle(styles.entry);
    row.createCell(7).setCellStyle(styles.entry);
  }
}
