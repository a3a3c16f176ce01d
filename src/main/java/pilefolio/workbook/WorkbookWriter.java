package pilefolio.workbook;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.ss.usermodel.ClientAnchor;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint;
import org.apache.poi.ss.usermodel.DataValidationConstraint.OperatorType;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFComment;
import org.apache.poi.xssf.usermodel.XSSFConditionalFormattingRule;
import org.apache.poi.xssf.usermodel.XSSFDataValidationHelper;
import org.apache.poi.xssf.usermodel.XSSFPatternFormatting;
import org.apache.poi.xssf.usermodel.XSSFRichTextString;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFSheetConditionalFormatting;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import pilefolio.units.DisplaySystem;

/** Writes workbooks from the columns: empty ones with example rows, and filled ones. */
final class WorkbookWriter {
  /** Rows of a table that have drop-downs and colours. */
  private static final int PREPARED_ROWS = 300;

  private static final int TITLE_ROW = 0;
  private static final int HEAD_ROW = 1;
  private static final int UNIT_ROW = 2;
  private static final int FIRST_ROW = 3;
  private static final int FIRST_ITEM = 2;
  private static final int WIDTH_UNIT = 256;
  private static final String FIXED = "2000-01-01T00:00:00Z";
  private static final int LONGEST_PROMPT = 250;
  private static final int MEANING_A_LINE = 66;
  private static final float LINE = 14;

  static {
    QuietLog.set();
  }

  private final DisplaySystem system;
  private final KnownNames names;
  private final XSSFWorkbook book = new XSSFWorkbook();
  private final Look look = new Look(book);
  private final Map<String, String> lists = new LinkedHashMap<>();
  private XSSFSheet listSheet;

  private WorkbookWriter(DisplaySystem system, KnownNames names) {
    this.system = system;
    this.names = names;
  }

  /** An empty workbook with example rows. */
  static byte[] blank(DisplaySystem system, KnownNames names) throws IOException {
    return new WorkbookWriter(system, names).write(Optional.empty());
  }

  /** A filled workbook. */
  static byte[] filled(DisplaySystem system, KnownNames names, Map<String, SheetText> texts)
      throws IOException {
    return new WorkbookWriter(system, names).write(Optional.of(texts));
  }

  private byte[] write(Optional<Map<String, SheetText>> texts) throws IOException {
    try (book) {
      new ReadMe(look, system).write(book.createSheet("Read me"));
      listSheet = book.createSheet("Lists");
      for (SheetSpec spec : WorkbookSpec.SHEETS) {
        XSSFSheet sheet = book.createSheet(spec.name());
        Optional<SheetText> text = texts.map(all -> all.get(spec.name()));
        if (spec.isForm()) {
          form(sheet, spec, text);
        } else {
          table(sheet, spec, text, texts.isEmpty());
        }
        print(sheet, spec);
      }
      book.setSheetOrder("Lists", book.getNumberOfSheets() - 1);
      book.setSheetHidden(book.getSheetIndex("Lists"), true);
      book.setActiveSheet(0);
      book.setSelectedTab(0);
      properties();
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      book.write(bytes);
      return FixedZip.repacked(bytes.toByteArray());
    }
  }

  private void properties() {
    POIXMLProperties.CoreProperties core = book.getProperties().getCoreProperties();
    core.setCreator("");
    core.setTitle("Secant wall input");
    try {
      core.setCreated(FIXED);
      core.setModified(FIXED);
    } catch (InvalidFormatException notADate) {
      throw new IllegalStateException(notADate);
    }
  }

  private void title(XSSFSheet sheet, SheetSpec spec) {
    XSSFRow row = sheet.createRow(TITLE_ROW);
    row.setHeightInPoints(24);
    XSSFCell cell = row.createCell(0);
    cell.setCellValue(spec.name() + ". " + spec.purpose());
    cell.setCellStyle(look.title());
  }

  private void print(XSSFSheet sheet, SheetSpec spec) {
    sheet.setRepeatingRows(CellRangeAddress.valueOf(spec.isForm() ? "1:2" : "1:3"));
    sheet.getPrintSetup().setLandscape(true);
    sheet.setFitToPage(true);
    sheet.getPrintSetup().setFitWidth((short) 1);
    sheet.getPrintSetup().setFitHeight((short) 0);
  }

  // ---- tables

  private void table(XSSFSheet sheet, SheetSpec spec, Optional<SheetText> text, boolean example) {
    title(sheet, spec);
    List<String> head =
        text.map(SheetText::head)
            .orElseGet(() -> spec.columns().stream().map(Column::name).toList());
    XSSFRow heads = sheet.createRow(HEAD_ROW);
    heads.setHeightInPoints(42);
    XSSFRow units = sheet.createRow(UNIT_ROW);
    for (int at = 0; at < head.size(); at++) {
      Optional<Column<?>> column = named(spec, head.get(at));
      XSSFCell cell = heads.createCell(at);
      cell.setCellValue(head.get(at));
      cell.setCellStyle(column.map(look::head).orElse(look.headOf(Need.OPTIONAL)));
      XSSFCell unit = units.createCell(at);
      unit.setCellStyle(look.unit());
      unit.setCellValue(unitText(column, text, at));
      if (column.isPresent()) {
        sheet.setDefaultColumnStyle(at, look.entry(column.get()));
        sheet.setColumnWidth(at, width(column.get()));
        note(sheet, cell, column.get());
        validation(sheet, column.get(), at, FIRST_ROW, FIRST_ROW + PREPARED_ROWS - 1);
        colourMissing(sheet, column.get(), at);
      }
    }
    sheet.createFreezePane(1, FIRST_ROW);
    if (example) {
      exampleRow(sheet, spec);
    }
    text.ifPresent(given -> rows(sheet, spec, head, given.rows()));
  }

  private String unitText(Optional<Column<?>> column, Optional<SheetText> text, int at) {
    if (text.isPresent() && !text.get().units().isEmpty()) {
      return at < text.get().units().size() ? text.get().units().get(at) : "";
    }
    return column.map(this::unitText).orElse("");
  }

  private String unitText(Column<?> column) {
    return column instanceof NumberColumn number ? number.unit(system).symbol() : "";
  }

  private void exampleRow(XSSFSheet sheet, SheetSpec spec) {
    XSSFRow row = sheet.createRow(FIRST_ROW);
    for (int at = 0; at < spec.columns().size(); at++) {
      XSSFCell cell = row.createCell(at);
      cell.setCellStyle(look.example());
      String text = exampleText(spec.columns().get(at));
      cell.setCellValue(at == 0 ? WorkbookSpec.EXAMPLE + " " + text : text);
    }
  }

  private String standardText(Column<?> column) {
    return column instanceof NumberColumn number
        ? number.standardText(system)
        : column.standardText();
  }

  private String exampleText(Column<?> column) {
    if (column instanceof NumberColumn number) {
      String text = number.example(number.unit(system));
      return text.isEmpty() ? "" : text;
    }
    return column.example();
  }

  private void rows(XSSFSheet sheet, SheetSpec spec, List<String> head, List<List<String>> rows) {
    for (int i = 0; i < rows.size(); i++) {
      XSSFRow row = sheet.createRow(FIRST_ROW + i);
      for (int at = 0; at < rows.get(i).size(); at++) {
        String text = rows.get(i).get(at);
        if (!text.isEmpty()) {
          Column<?> column = at < head.size() ? named(spec, head.get(at)).orElse(null) : null;
          XSSFCell cell = row.createCell(at);
          cell.setCellStyle(column == null ? look.plain() : look.entry(column));
          CellWriter.write(cell, column, text);
        }
      }
    }
  }

  private static Optional<Column<?>> named(SheetSpec spec, String name) {
    for (Column<?> column : spec.columns()) {
      if (column.name().equals(name)) {
        return Optional.of(column);
      }
    }
    return Optional.empty();
  }

  private static int width(Column<?> column) {
    int longest = 0;
    for (String word : column.name().split(" ", -1)) {
      longest = Math.max(longest, word.length());
    }
    int wanted = Math.max(longest + 3, 10);
    if (column instanceof TextColumn text && text.role() == TextColumn.Role.WORDS) {
      wanted = Math.max(wanted, 26);
    } else if (column instanceof ChoiceColumn<?> choice) {
      int label = choice.labels().stream().mapToInt(String::length).max().orElse(0);
      wanted = Math.max(wanted, label + 3);
    } else if (column instanceof DateColumn) {
      wanted = Math.max(wanted, 12);
    }
    return Math.min(40, wanted) * WIDTH_UNIT;
  }

  // ---- forms

  private void form(XSSFSheet sheet, SheetSpec spec, Optional<SheetText> text) {
    title(sheet, spec);
    XSSFRow heads = sheet.createRow(HEAD_ROW);
    List<String> head =
        List.of(
            WorkbookSpec.ITEM,
            WorkbookSpec.VALUE,
            WorkbookSpec.UNIT,
            "Meaning",
            "If empty",
            "Example");
    int[] widths = {30, 36, 10, 64, 20, 28};
    for (int at = 0; at < head.size(); at++) {
      XSSFCell cell = heads.createCell(at);
      cell.setCellValue(head.get(at));
      cell.setCellStyle(look.headOf(Need.OPTIONAL));
      sheet.setColumnWidth(at, widths[at] * WIDTH_UNIT);
    }
    int at = FIRST_ITEM;
    for (Column<?> column : spec.columns()) {
      List<String> given = given(text, column.name());
      if (text.isPresent() && isDropped(text.get(), column.name())) {
        continue;
      }
      item(sheet, at, column, given);
      at++;
    }
    if (text.isPresent()) {
      for (List<String> row : text.get().rows()) {
        if (named(spec, row.get(0)).isEmpty() && !row.get(0).startsWith("-")) {
          XSSFRow extra = sheet.createRow(at);
          for (int i = 0; i < row.size(); i++) {
            extra.createCell(i).setCellValue(row.get(i));
          }
          at++;
        }
      }
    }
    sheet.createFreezePane(1, FIRST_ITEM);
  }

  /** A row {@code -Item} in a text leaves the item out. */
  private static boolean isDropped(SheetText text, String name) {
    return text.rows().stream().anyMatch(row -> row.get(0).equals("-" + name));
  }

  private static List<String> given(Optional<SheetText> text, String name) {
    return text.stream()
        .flatMap(all -> all.rows().stream())
        .filter(row -> row.get(0).equals(name))
        .findFirst()
        .orElse(List.of());
  }

  private void item(XSSFSheet sheet, int at, Column<?> column, List<String> given) {
    XSSFRow row = sheet.createRow(at);
    XSSFCell item = row.createCell(0);
    item.setCellValue(column.name());
    item.setCellStyle(look.head(column));
    XSSFCell value = row.createCell(1);
    value.setCellStyle(look.entry(column));
    if (given.size() > 1) {
      CellWriter.write(value, column, given.get(1));
    }
    XSSFCell unit = row.createCell(2);
    unit.setCellStyle(look.unitOfItem());
    unit.setCellValue(
        given.size() > 2 && !given.get(2).isEmpty() ? given.get(2) : unitText(column));
    XSSFCell meaning = row.createCell(3);
    meaning.setCellStyle(look.words());
    meaning.setCellValue(column.meaning());
    if (column.meaning().length() > MEANING_A_LINE) {
      row.setHeightInPoints(2 * LINE);
    }
    XSSFCell standard = row.createCell(4);
    standard.setCellStyle(look.example());
    standard.setCellValue(
        column.need() == Need.DEFAULTED ? standardText(column) : column.need().label());
    XSSFCell example = row.createCell(5);
    example.setCellStyle(look.example());
    example.setCellValue(exampleText(column));
    note(sheet, item, column);
    validation(sheet, column, 1, at, at);
  }

  // ---- help on cells

  private String help(Column<?> column) {
    StringBuilder text = new StringBuilder(column.meaning());
    if (column instanceof NumberColumn number) {
      if (number.hard().isLimited()) {
        text.append(" Possible: ").append(number.hard().text(number.unit(system))).append('.');
      }
      if (number.usual().isLimited()) {
        text.append(" Usual: ").append(number.usual().text(number.unit(system))).append('.');
      }
    }
    if (column instanceof ChoiceColumn<?> choice) {
      text.append(" One of: ").append(String.join(", ", choice.labels())).append('.');
    }
    if (column.need() == Need.DEFAULTED) {
      text.append(" If empty: ").append(standardText(column)).append('.');
    } else {
      text.append(' ').append(column.need() == Need.SIZED ? "Engine-sized if empty" : cap(column));
      text.append('.');
    }
    return text.toString();
  }

  private static String cap(Column<?> column) {
    String label = column.need().label();
    return label.substring(0, 1).toUpperCase(Locale.ROOT) + label.substring(1);
  }

  private void note(XSSFSheet sheet, XSSFCell cell, Column<?> column) {
    XSSFClientAnchor anchor = book.getCreationHelper().createClientAnchor();
    anchor.setCol1(cell.getColumnIndex() + 1);
    anchor.setRow1(cell.getRowIndex());
    anchor.setCol2(cell.getColumnIndex() + 5);
    anchor.setRow2(cell.getRowIndex() + 5);
    anchor.setAnchorType(ClientAnchor.AnchorType.MOVE_DONT_RESIZE);
    XSSFComment comment = sheet.createDrawingPatriarch().createCellComment(anchor);
    comment.setString(new XSSFRichTextString(help(column)));
    comment.setAuthor("");
    cell.setCellComment(comment);
  }

  private void validation(XSSFSheet sheet, Column<?> column, int at, int first, int last) {
    XSSFDataValidationHelper helper = new XSSFDataValidationHelper(sheet);
    Optional<DataValidationConstraint> constraint = constraint(helper, column, at, first);
    if (constraint.isEmpty()) {
      return;
    }
    DataValidation validation =
        helper.createValidation(constraint.get(), new CellRangeAddressList(first, last, at, at));
    validation.setEmptyCellAllowed(true);
    validation.setSuppressDropDownArrow(true);
    validation.createPromptBox(
        shortened(column.name(), 32), shortened(help(column), LONGEST_PROMPT));
    validation.setShowPromptBox(true);
    validation.setErrorStyle(
        column instanceof ChoiceColumn
            ? DataValidation.ErrorStyle.STOP
            : DataValidation.ErrorStyle.WARNING);
    validation.createErrorBox(
        shortened(column.name(), 32), shortened(expected(column), LONGEST_PROMPT));
    validation.setShowErrorBox(true);
    sheet.addValidationData(validation);
  }

  private String expected(Column<?> column) {
    return column.expected(
        column instanceof NumberColumn number ? number.unit(system) : pilefolio.units.Units.ONE);
  }

  private static String shortened(String text, int longest) {
    return text.length() <= longest ? text : text.substring(0, longest - 1) + "…";
  }

  private Optional<DataValidationConstraint> constraint(
      XSSFDataValidationHelper helper, Column<?> column, int at, int first) {
    if (column instanceof ChoiceColumn<?> choice) {
      return Optional.of(helper.createFormulaListConstraint(list(column.name(), choice.labels())));
    }
    if (column.equals(MethodsSheet.BASIS) && !names.bases().isEmpty()) {
      return Optional.of(
          helper.createFormulaListConstraint(list(column.name(), new ArrayList<>(names.bases()))));
    }
    if (column.equals(MethodsSheet.TOLERANCES) && !names.toleranceSets().isEmpty()) {
      return Optional.of(
          helper.createFormulaListConstraint(
              list(column.name(), new ArrayList<>(names.toleranceSets()))));
    }
    if (column instanceof TextColumn text && text.role() == TextColumn.Role.REFERENCE) {
      String range =
          "'" + text.target() + "'!$A$" + (FIRST_ROW + 1) + ":$A$" + (FIRST_ROW + PREPARED_ROWS);
      return Optional.of(helper.createFormulaListConstraint(range));
    }
    if (column instanceof DateColumn) {
      return Optional.of(
          helper.createDateConstraint(
              OperatorType.BETWEEN, "DATE(1990,1,1)", "DATE(2199,12,31)", "yyyy-mm-dd"));
    }
    if (column instanceof NumberColumn) {
      // The limits depend on the unit row, which the user may change; the reader checks them.
      String cell = new CellReference(first, at, false, false).formatAsString();
      return Optional.of(helper.createCustomConstraint("ISNUMBER(" + cell + ")"));
    }
    return Optional.empty();
  }

  /** Puts a list of answers on the hidden sheet and names it; equal lists are kept once. */
  private String list(String name, List<String> answers) {
    String key = String.join("|", answers);
    return lists.computeIfAbsent(key, unused -> newList(name, answers));
  }

  private String newList(String name, List<String> answers) {
    int at = lists.size();
    String label = "list_" + name.replaceAll("[^A-Za-z0-9]+", "_");
    for (int i = 0; i <= answers.size(); i++) {
      XSSFRow row = listSheet.getRow(i) == null ? listSheet.createRow(i) : listSheet.getRow(i);
      row.createCell(at).setCellValue(i == 0 ? name : answers.get(i - 1));
    }
    String column = CellReference.convertNumToColString(at);
    Name named = book.createName();
    named.setNameName(lists.containsValue(label) ? label + "_" + at : label);
    named.setRefersToFormula("Lists!$" + column + "$2:$" + column + "$" + (answers.size() + 1));
    return named.getNameName();
  }

  /** A required cell turns red as soon as its row is begun and it is empty. */
  private void colourMissing(XSSFSheet sheet, Column<?> column, int at) {
    if (column.need() != Need.REQUIRED || at == 0) {
      return;
    }
    String letters = CellReference.convertNumToColString(at);
    String first = "$A" + (FIRST_ROW + 1);
    XSSFSheetConditionalFormatting formatting = sheet.getSheetConditionalFormatting();
    XSSFConditionalFormattingRule rule =
        formatting.createConditionalFormattingRule(
            "AND(LEN("
                + first
                + ")>0,LEFT("
                + first
                + ",4)<>\""
                + WorkbookSpec.EXAMPLE
                + "\",LEN("
                + letters
                + (FIRST_ROW + 1)
                + ")=0)");
    XSSFPatternFormatting fill = rule.createPatternFormatting();
    fill.setFillBackgroundColor(Look.color(Look.MISSING_FILL));
    fill.setFillPattern(FillPatternType.SOLID_FOREGROUND.getCode());
    formatting.addConditionalFormatting(
        new CellRangeAddress[] {
          new CellRangeAddress(FIRST_ROW, FIRST_ROW + PREPARED_ROWS - 1, at, at)
        },
        rule);
  }
}
