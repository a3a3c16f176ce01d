package pilefolio.workbook;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.common.usermodel.HyperlinkType;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackagePart;
import org.apache.poi.openxml4j.opc.PackageRelationship;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFComment;
import org.apache.poi.xssf.usermodel.XSSFHyperlink;
import org.apache.poi.xssf.usermodel.XSSFRichTextString;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbookType;
import pilefolio.findings.CellRef;
import pilefolio.findings.Finding;
import pilefolio.findings.Severity;

/**
 * A copy of a workbook with its findings: colour and a note on each cell, and a list on a first
 * sheet. Values, formulas and formats stay as they are; macros are left out.
 */
public final class AnnotatedCopy {
  private static final String LIST = "Findings";
  private static final int WIDTH_UNIT = 256;
  private static final float LINE = 14;
  private static final int CHARACTERS_A_LINE = 66;
  private static final int NOTE_COLUMNS = 5;
  private static final int NOTE_ROWS = 6;
  private static final String MACROS =
      "http://schemas.microsoft.com/office/2006/relationships/vbaProject";

  private final XSSFWorkbook book;
  private final Map<String, XSSFCellStyle> styles = new HashMap<>();

  private AnnotatedCopy(XSSFWorkbook book) {
    this.book = book;
  }

  /**
   * Writes the copy, replacing a file of that name.
   *
   * @param workbook the workbook that was read
   * @param findings its findings
   * @param copy where to
   * @return false if the workbook cannot be opened, so that there is nothing to copy
   * @throws IOException if a file cannot be read or written
   */
  public static boolean write(Path workbook, List<Finding> findings, Path copy) throws IOException {
    Optional<XSSFWorkbook> opened = new FileGate(finding -> {}).open(workbook);
    if (opened.isEmpty()) {
      return false;
    }
    try (XSSFWorkbook book = opened.get()) {
      new AnnotatedCopy(book).annotate(findings);
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      book.write(bytes);
      Files.write(copy, FixedZip.repacked(bytes.toByteArray()));
      return true;
    }
  }

  private void annotate(List<Finding> findings) {
    leaveMacrosOut();
    Map<CellRef, List<Finding>> byCell = new LinkedHashMap<>();
    for (Finding finding : findings) {
      if (book.getSheet(finding.where().sheet()) != null) {
        byCell.computeIfAbsent(shown(finding.where()), cell -> new ArrayList<>()).add(finding);
      }
    }
    byCell.forEach(this::mark);
    list(findings);
  }

  /** The cell on which a finding about a whole row or sheet is shown. */
  private static CellRef shown(CellRef where) {
    return new CellRef(where.sheet(), Math.max(1, where.row()), Math.max(1, where.column()));
  }

  private void leaveMacrosOut() {
    if (!book.isMacroEnabled()) {
      return;
    }
    book.setWorkbookType(XSSFWorkbookType.XLSX);
    PackagePart main = book.getPackagePart();
    OPCPackage parts = book.getPackage();
    try {
      for (PackageRelationship relation : main.getRelationshipsByType(MACROS)) {
        parts.removePart(main.getRelatedPart(relation));
        main.removeRelationship(relation.getId());
      }
    } catch (InvalidFormatException damaged) {
      throw new IllegalStateException(damaged);
    }
  }

  private void mark(CellRef where, List<Finding> findings) {
    XSSFSheet sheet = book.getSheet(where.sheet());
    XSSFRow row = sheet.getRow(where.row() - 1);
    if (row == null) {
      row = sheet.createRow(where.row() - 1);
    }
    XSSFCell cell = row.getCell(where.column() - 1);
    if (cell == null) {
      cell = row.createCell(where.column() - 1);
    }
    boolean error = findings.stream().anyMatch(one -> one.severity() == Severity.ERROR);
    cell.setCellStyle(coloured(cell.getCellStyle(), error));
    StringBuilder text = new StringBuilder();
    for (Finding finding : findings) {
      text.append(text.isEmpty() ? "" : "\n").append(sentence(finding));
    }
    XSSFComment old = cell.getCellComment();
    if (old != null) {
      text.append("\n\n").append(old.getString().getString());
      cell.removeCellComment();
    }
    note(sheet, cell, text.toString());
  }

  private static String sentence(Finding finding) {
    String severity = finding.severity() == Severity.ERROR ? "Error" : "Warning";
    return severity + " (" + finding.code() + "): " + finding.found() + "; " + finding.expected();
  }

  private XSSFCellStyle coloured(XSSFCellStyle style, boolean error) {
    return styles.computeIfAbsent(
        style.getIndex() + (error ? " error" : " warning"),
        key -> {
          XSSFCellStyle copy = book.createCellStyle();
          copy.cloneStyleFrom(style);
          copy.setFillForegroundColor(Look.color(error ? Look.MISSING_FILL : Look.WARNING_FILL));
          copy.setFillPattern(FillPatternType.SOLID_FOREGROUND);
          return copy;
        });
  }

  private void note(XSSFSheet sheet, XSSFCell cell, String text) {
    XSSFClientAnchor anchor = book.getCreationHelper().createClientAnchor();
    anchor.setCol1(cell.getColumnIndex() + 1);
    anchor.setRow1(cell.getRowIndex());
    anchor.setCol2(cell.getColumnIndex() + 1 + NOTE_COLUMNS);
    anchor.setRow2(cell.getRowIndex() + NOTE_ROWS);
    XSSFComment comment = sheet.createDrawingPatriarch().createCellComment(anchor);
    comment.setString(new XSSFRichTextString(text));
    comment.setAuthor("");
    cell.setCellComment(comment);
  }

  private void list(List<Finding> findings) {
    int old = book.getSheetIndex(LIST);
    if (old >= 0) {
      book.removeSheetAt(old);
    }
    XSSFSheet sheet = book.createSheet(LIST);
    book.setSheetOrder(LIST, 0);
    book.setActiveSheet(0);
    book.setSelectedTab(0);
    Look look = new Look(book);
    row(sheet, 0, look.headOf(Need.OPTIONAL), "Place", "Weight", "Code", "Found", "Expected");
    int[] widths = {22, 10, 26, 60, 70};
    for (int i = 0; i < widths.length; i++) {
      sheet.setColumnWidth(i, widths[i] * WIDTH_UNIT);
    }
    int at = 1;
    for (Finding finding : findings) {
      row(
          sheet,
          at,
          look.words(),
          finding.where().address(),
          finding.severity() == Severity.ERROR ? "Error" : "Warning",
          finding.code(),
          finding.found(),
          finding.expected());
      link(sheet.getRow(at).getCell(0), finding.where());
      at++;
    }
    sheet.createFreezePane(0, 1);
    sheet.getPrintSetup().setLandscape(true);
    sheet.setFitToPage(true);
    sheet.getPrintSetup().setFitHeight((short) 0);
  }

  private void link(XSSFCell cell, CellRef where) {
    if (book.getSheet(where.sheet()) == null) {
      return;
    }
    CellRef shown = shown(where);
    String address = shown.address();
    XSSFHyperlink link = book.getCreationHelper().createHyperlink(HyperlinkType.DOCUMENT);
    link.setAddress(
        "'" + shown.sheet().replace("'", "''") + "'" + address.substring(address.lastIndexOf('!')));
    cell.setHyperlink(link);
  }

  private static void row(XSSFSheet sheet, int at, XSSFCellStyle style, String... texts) {
    XSSFRow row = sheet.createRow(at);
    int longest = 0;
    for (String text : texts) {
      longest = Math.max(longest, text.length());
    }
    row.setHeightInPoints(LINE * (1 + longest / CHARACTERS_A_LINE));
    for (int i = 0; i < texts.length; i++) {
      XSSFCell cell = row.createCell(i);
      cell.setCellValue(texts[i]);
      cell.setCellStyle(style);
    }
  }
}
