package pilefolio.workbook;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import pilefolio.findings.CellRef;
import pilefolio.findings.Finding;
import pilefolio.findings.Severity;
import pilefolio.model.Submission;

/** Reads a workbook: everything wrong with it at once, or what the user described. */
public final class WorkbookReader {
  private final KnownNames names;
  private final List<Finding> findings = new ArrayList<>();
  private final Defaults defaults = new Defaults();

  private WorkbookReader(KnownNames names) {
    this.names = names;
  }

  /**
   * Reads a workbook without checking names against standards data.
   *
   * @throws IOException if the file cannot be read at all
   */
  public static ReadResult read(Path file) throws IOException {
    return read(file, KnownNames.none());
  }

  /**
   * Reads a workbook.
   *
   * @param names names the standards data know
   * @throws IOException if the file cannot be read at all
   */
  public static ReadResult read(Path file, KnownNames names) throws IOException {
    WorkbookReader reader = new WorkbookReader(names);
    return reader.result(new FileGate(reader.findings::add).open(file));
  }

  /**
   * Reads a workbook that is held in memory.
   *
   * @param names names the standards data know
   * @throws IOException if the file cannot be read at all
   */
  public static ReadResult read(byte[] file, KnownNames names) throws IOException {
    WorkbookReader reader = new WorkbookReader(names);
    return reader.result(new FileGate(reader.findings::add).open(file));
  }

  /** Reads a workbook that is open already, and closes it. */
  static ReadResult read(XSSFWorkbook workbook, KnownNames names) throws IOException {
    return new WorkbookReader(names).result(Optional.of(workbook));
  }

  private ReadResult result(Optional<XSSFWorkbook> opened) throws IOException {
    if (opened.isEmpty()) {
      return new ReadResult(Optional.empty(), sorted(), List.of());
    }
    try (XSSFWorkbook workbook = opened.get()) {
      Book book = book(workbook);
      for (Rule rule : Rules.ALL) {
        rule.check(book, names, findings::add);
      }
      boolean refused = findings.stream().anyMatch(one -> one.severity() == Severity.ERROR);
      Optional<Submission> submission =
          refused ? Optional.empty() : Optional.of(new SubmissionBuilder(book, defaults).build());
      submission.ifPresent(described -> LayoutRule.check(described, findings::add));
      return new ReadResult(submission, sorted(), Echoes.of(book, defaults.taken()));
    }
  }

  private List<Finding> sorted() {
    Map<String, Integer> order = new HashMap<>();
    order.put(FileGate.FILE.sheet(), 0);
    WorkbookSpec.SHEETS.forEach(spec -> order.put(spec.name(), order.size()));
    findings.sort(
        Comparator.<Finding>comparingInt(
                one -> order.getOrDefault(one.where().sheet(), order.size()))
            .thenComparing(Finding.IN_ORDER));
    return findings.stream().distinct().toList();
  }

  private Book book(XSSFWorkbook workbook) {
    CellLooker looker = new CellLooker(workbook, findings::add);
    Map<SheetSpec, List<Row>> rows = new LinkedHashMap<>();
    for (SheetSpec spec : WorkbookSpec.SHEETS) {
      Optional<XSSFSheet> sheet = sheet(workbook, spec.name());
      if (sheet.isPresent()) {
        reportHidden(workbook, sheet.get());
        rows.put(
            spec, new SheetReader(spec, sheet.get(), looker, findings::add, defaults::note).read());
      } else if (spec.required()) {
        findings.add(
            FindingKind.MISSING_SHEET.at(
                CellRef.sheet(spec.name()), "the sheet is not there", spec.purpose()));
      }
    }
    reportUnknownSheets(workbook);
    return new Book(rows);
  }

  private static Optional<XSSFSheet> sheet(XSSFWorkbook workbook, String name) {
    for (int i = 0; i < workbook.getNumberOfSheets(); i++) {
      if (workbook.getSheetName(i).strip().equalsIgnoreCase(name)) {
        return Optional.of(workbook.getSheetAt(i));
      }
    }
    return Optional.empty();
  }

  private void reportHidden(XSSFWorkbook workbook, XSSFSheet sheet) {
    int at = workbook.getSheetIndex(sheet);
    if (workbook.isSheetHidden(at) || workbook.isSheetVeryHidden(at)) {
      findings.add(
          FindingKind.HIDDEN_SHEET.at(
              CellRef.sheet(sheet.getSheetName()),
              "the sheet is hidden",
              "it is read all the same; show it or delete it"));
    }
  }

  private void reportUnknownSheets(XSSFWorkbook workbook) {
    Set<String> known = new HashSet<>();
    List<String> names = new ArrayList<>();
    for (SheetSpec spec : WorkbookSpec.SHEETS) {
      known.add(spec.name().toLowerCase(java.util.Locale.ROOT));
      names.add(spec.name());
    }
    WorkbookSpec.NOT_READ.forEach(name -> known.add(name.toLowerCase(java.util.Locale.ROOT)));
    for (int i = 0; i < workbook.getNumberOfSheets(); i++) {
      String name = workbook.getSheetName(i);
      if (!known.contains(name.strip().toLowerCase(java.util.Locale.ROOT))) {
        findings.add(
            FindingKind.UNKNOWN_SHEET.at(
                CellRef.sheet(name),
                "the sheet \"" + name + "\" is not known and is not read",
                Nearest.to(name, names)
                    .map(near -> "did you mean " + near + "?")
                    .orElse("call it Notes if it is for people only")));
      }
    }
  }
}
