package pilefolio.workbook;

import java.util.Locale;
import java.util.Set;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import pilefolio.findings.CellRef;
import pilefolio.findings.Finding;

/**
 * Looks at single cells and steps round the traps of the file format: a formula that was never
 * calculated reads as zero, and a saved value may be stale. Formulas are calculated again, but only
 * if every formula of the workbook is plain arithmetic on small areas; a saved value that disagrees
 * is a finding.
 */
final class CellLooker {
  private static final double SAME = 1e-9;
  private static final int LARGEST_AREA = 10_000;
  private static final int MOST_FORMULAS = 5_000;
  private static final int LONGEST_FORMULA = 1_000;
  private static final Pattern FUNCTION = Pattern.compile("([A-Za-z_][A-Za-z0-9_.]*)\\s*\\(");
  private static final Pattern AREA =
      Pattern.compile("\\$?[A-Z]{1,3}\\$?\\d+:\\$?[A-Z]{1,3}\\$?\\d+");
  private static final Pattern WHOLE_LINE =
      Pattern.compile("\\$?[A-Z]{1,3}:\\$?[A-Z]{1,3}|\\$?\\d+:\\$?\\d+");
  private static final Set<String> ARITHMETIC =
      Set.of(
          "SUM",
          "MIN",
          "MAX",
          "AVERAGE",
          "ROUND",
          "ROUNDUP",
          "ROUNDDOWN",
          "CEILING",
          "FLOOR",
          "INT",
          "ABS",
          "SQRT",
          "PI",
          "SIN",
          "COS",
          "TAN",
          "ASIN",
          "ACOS",
          "ATAN",
          "ATAN2",
          "EXP",
          "LN",
          "LOG",
          "LOG10",
          "POWER",
          "RADIANS",
          "DEGREES",
          "IF",
          "AND",
          "OR",
          "NOT",
          "MOD",
          "DATE",
          "INDEX",
          "MATCH",
          "VLOOKUP",
          "CONCATENATE",
          "TEXT",
          "COUNT",
          "COUNTA");

  private final Consumer<Finding> findings;
  private final FormulaEvaluator evaluator;
  private final boolean plain;

  CellLooker(XSSFWorkbook book, Consumer<Finding> findings) {
    this.findings = findings;
    this.evaluator = book.getCreationHelper().createFormulaEvaluator();
    this.plain = isPlain(book);
  }

  private static boolean isPlain(XSSFWorkbook book) {
    int formulas = 0;
    for (int i = 0; i < book.getNumberOfSheets(); i++) {
      XSSFSheet sheet = book.getSheetAt(i);
      for (org.apache.poi.ss.usermodel.Row row : sheet) {
        for (Cell cell : row) {
          if (cell.getCellType() == CellType.FORMULA) {
            formulas++;
            if (formulas > MOST_FORMULAS || !isPlain(formula(cell))) {
              return false;
            }
          }
        }
      }
    }
    return true;
  }

  private static String formula(Cell cell) {
    try {
      return cell.getCellFormula();
    } catch (RuntimeException damaged) {
      return "[";
    }
  }

  private static boolean isPlain(String formula) {
    if (formula.length() > LONGEST_FORMULA
        || formula.indexOf('[') >= 0
        || WHOLE_LINE.matcher(formula).find()) {
      return false;
    }
    Matcher function = FUNCTION.matcher(formula);
    while (function.find()) {
      if (!ARITHMETIC.contains(function.group(1).toUpperCase(Locale.ROOT))) {
        return false;
      }
    }
    Matcher area = AREA.matcher(formula);
    while (area.find()) {
      AreaReference cells = new AreaReference(area.group(), SpreadsheetVersion.EXCEL2007);
      long rows = 1L + Math.abs(cells.getLastCell().getRow() - cells.getFirstCell().getRow());
      long columns = 1L + Math.abs(cells.getLastCell().getCol() - cells.getFirstCell().getCol());
      if (rows * columns > LARGEST_AREA) {
        return false;
      }
    }
    return true;
  }

  /** What stands in a cell; a missing cell is empty. */
  CellContent look(Cell cell, CellRef at) {
    if (cell == null) {
      return new CellContent.Empty();
    }
    if (cell.getCellType() == CellType.FORMULA) {
      return formula((XSSFCell) cell, at);
    }
    return saved(cell, cell.getCellType(), at);
  }

  private CellContent formula(XSSFCell cell, CellRef at) {
    CellType type = cell.getCachedFormulaResultType();
    if (cell.getRawValue() == null && type != CellType.STRING) {
      findings.accept(
          FindingKind.FORMULA_WITHOUT_VALUE.at(
              at,
              "the formula was never calculated",
              "open the workbook in a spreadsheet program, calculate and save it"));
      return new CellContent.Unusable();
    }
    CellContent content = saved(cell, type, at);
    if (content instanceof CellContent.Unusable) {
      return content;
    }
    return recalculated(cell, content, at);
  }

  private CellContent recalculated(XSSFCell cell, CellContent content, CellRef at) {
    if (!plain) {
      findings.accept(
          FindingKind.FORMULA_NOT_CHECKED.at(
              at,
              "the workbook holds formulas that are not calculated again here",
              "the saved value is used; replace the formula by its value if it matters"));
      return content;
    }
    CellValue value;
    try {
      value = evaluator.evaluate(cell);
    } catch (RuntimeException | StackOverflowError cannot) {
      findings.accept(
          FindingKind.FORMULA_NOT_CHECKED.at(
              at,
              "the formula could not be calculated again",
              "the saved value is used; replace the formula by its value if it matters"));
      return content;
    }
    if (isSame(content, value)) {
      return content;
    }
    findings.accept(
        FindingKind.FORMULA_VALUE_DIFFERS.at(
            at,
            "the formula gives "
                + value.formatAsString()
                + ", but the workbook was saved with "
                + text(content),
            "open the workbook in a spreadsheet program, calculate and save it"));
    return new CellContent.Unusable();
  }

  private static boolean isSame(CellContent content, CellValue value) {
    if (content instanceof CellContent.Figure figure) {
      return value.getCellType() == CellType.NUMERIC
          && Math.abs(value.getNumberValue() - figure.value())
              <= SAME * Math.max(1e-6, Math.abs(figure.value()));
    }
    if (content instanceof CellContent.Words words) {
      return value.getCellType() == CellType.STRING && value.getStringValue().equals(words.text());
    }
    if (content instanceof CellContent.Truth truth) {
      return value.getCellType() == CellType.BOOLEAN && value.getBooleanValue() == truth.value();
    }
    return value.getCellType() == CellType.STRING && value.getStringValue().isBlank();
  }

  private static String text(CellContent content) {
    if (content instanceof CellContent.Figure figure) {
      return String.valueOf(figure.value());
    }
    return content instanceof CellContent.Words words
        ? "\"" + NumberColumn.shortened(words.text()) + "\""
        : "another value";
  }

  private CellContent saved(Cell cell, CellType type, CellRef at) {
    return switch (type) {
      case NUMERIC -> figure(cell);
      case STRING ->
          cell.getStringCellValue().isBlank()
              ? new CellContent.Empty()
              : new CellContent.Words(cell.getStringCellValue());
      case BOOLEAN -> new CellContent.Truth(cell.getBooleanCellValue());
      case ERROR -> {
        findings.accept(
            FindingKind.ERROR_VALUE.at(
                at,
                "the cell shows " + FormulaError.forInt(cell.getErrorCellValue()).getString(),
                "put the formula right"));
        yield new CellContent.Unusable();
      }
      default -> new CellContent.Empty();
    };
  }

  private static CellContent figure(Cell cell) {
    String format = cell.getCellStyle().getDataFormatString();
    return new CellContent.Figure(
        cell.getNumericCellValue(),
        DateUtil.isCellDateFormatted(cell),
        format != null && format.contains("%"));
  }
}
