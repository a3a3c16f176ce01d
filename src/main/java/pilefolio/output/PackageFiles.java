package pilefolio.output;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import pilefolio.model.DocumentStatus;
import pilefolio.model.PaperSize;
import pilefolio.model.Project;
import pilefolio.output.figure.Figures;
import pilefolio.output.json.RecordWriter;
import pilefolio.output.pdf.Attachment;
import pilefolio.output.pdf.Attachment.Relationship;
import pilefolio.output.pdf.DocumentInfo;
import pilefolio.output.pdf.PageIndex;
import pilefolio.output.pdf.Paper;
import pilefolio.output.pdf.PdfOrder;
import pilefolio.output.pdf.PdfRenderer;
import pilefolio.output.pdf.RenderedPdf;
import pilefolio.output.pdf.TemplateSource;
import pilefolio.output.pdf.Templates;
import pilefolio.output.xlsx.CheckerWorkbook;
import pilefolio.output.xlsx.Schedules;
import pilefolio.submittal.Submittal;
import pilefolio.submittal.calculations.CalculationContent;
import pilefolio.submittal.figure.FigureContent;
import pilefolio.submittal.method.MethodStatement;
import pilefolio.units.DisplaySystem;

/** The files of one package, by name. */
public final class PackageFiles {
  private static final String SPREADSHEET =
      "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

  private final Submittal submittal;
  private final byte[] workbook;
  private final Templates templates;
  private final PdfRenderer renderer;
  private final Figures figures;

  private PackageFiles(Submittal submittal, byte[] workbook, TemplateSource source) {
    this.submittal = submittal;
    this.workbook = workbook;
    this.templates = new Templates(source);
    this.renderer = new PdfRenderer(source);
    this.figures = Figures.of(FigureContent.of(submittal));
  }

  /**
   * Makes the files.
   *
   * @param submittal the content
   * @param workbook the workbook's bytes, to travel inside the calculation package
   * @param source where templates come from
   */
  public static Map<String, byte[]> of(
      Submittal submittal, byte[] workbook, TemplateSource source) {
    PackageFiles files = new PackageFiles(submittal, workbook, source);
    // The spreadsheets and the method statement need nothing of the calculations, which take
    // longest.
    CompletableFuture<byte[]> checker =
        CompletableFuture.supplyAsync(() -> CheckerWorkbook.write(submittal));
    CompletableFuture<byte[]> schedules =
        CompletableFuture.supplyAsync(() -> Schedules.write(submittal));
    CompletableFuture<byte[]> method =
        CompletableFuture.supplyAsync(() -> files.methodStatement().content());
    Map<String, byte[]> made = new LinkedHashMap<>();
    RenderedPdf calculations = files.calculations();
    made.put("calculations.pdf", calculations.content());
    made.put("method-statement.pdf", result(method));
    made.put("schedules.xlsx", result(schedules));
    made.put("checker.xlsx", result(checker));
    made.put("record.json", files.record(calculations.pages()));
    return made;
  }

  /** The result, or the fault itself and not its wrapping. */
  private static byte[] result(CompletableFuture<byte[]> future) {
    try {
      return future.join();
    } catch (CompletionException e) {
      if (e.getCause() instanceof RuntimeException fault) {
        throw fault;
      }
      throw e;
    }
  }

  /**
   * The two documents as the renderer gets them, by file name; for measuring the renderer alone.
   */
  public static Map<String, PdfOrder> orders(Submittal submittal, TemplateSource source) {
    PackageFiles files = new PackageFiles(submittal, new byte[0], source);
    return Map.of(
        "calculations.pdf",
        files.order(files.calculationsText(), "Calculation package").figures(files.figures.all()),
        "method-statement.pdf",
        files.order(files.methodStatementText(), "Method statement").figures(files.figures.all()));
  }

  private String calculationsText() {
    CalculationContent content = CalculationContent.of(submittal, figures.placed());
    return templates.fill("calculations.ftlx", Map.of("content", content));
  }

  private String methodStatementText() {
    return templates.fill(
        "method-statement.ftlx",
        Map.of("content", MethodStatement.of(submittal), "figures", figures.inMethodStatement()));
  }

  private RenderedPdf calculations() {
    return renderer.render(
        order(calculationsText(), "Calculation package")
            .figures(figures.all())
            .attach(
                pages ->
                    List.of(
                        new Attachment(
                            submittal.engine().workbook(),
                            SPREADSHEET,
                            workbook,
                            "The workbook from which this package was made",
                            Relationship.SOURCE),
                        new Attachment(
                            "record.json",
                            "application/json",
                            record(pages),
                            "Every input, line and verdict of this package",
                            Relationship.DATA))));
  }

  private RenderedPdf methodStatement() {
    return renderer.render(order(methodStatementText(), "Method statement").figures(figures.all()));
  }

  private PdfOrder order(String xhtml, String kind) {
    Project project = submittal.job().submission().project();
    Instant date = project.date().atStartOfDay().toInstant(ZoneOffset.UTC);
    DocumentInfo info =
        new DocumentInfo(
            kind + ", " + project.title(),
            project.contractor(),
            "Secant wall",
            "secant wall, " + project.documentNumber() + ", revision " + project.revision(),
            submittal.system() == DisplaySystem.US ? "en-US" : "en-GB",
            date);
    Paper paper = project.paper() == PaperSize.A4 ? Paper.A4 : Paper.LETTER;
    PdfOrder order = PdfOrder.of(xhtml, info, paper);
    return project.status() == DocumentStatus.DRAFT ? order.stamped("DRAFT") : order;
  }

  private byte[] record(PageIndex index) {
    Map<String, Integer> pages = new LinkedHashMap<>();
    submittal
        .answers()
        .forEach(a -> index.pageOf(a.anchor()).ifPresent(n -> pages.put(a.anchor(), n)));
    return RecordWriter.write(submittal, pages);
  }
}
