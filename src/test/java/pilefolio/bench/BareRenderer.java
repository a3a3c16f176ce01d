package pilefolio.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import pilefolio.cli.SampleContent;
import pilefolio.output.PackageFiles;
import pilefolio.output.pdf.PdfOrder;
import pilefolio.output.pdf.PdfRenderer;
import pilefolio.output.pdf.TemplateSource;

/** Renders the documents of a workbook once and prints the seconds and the pages. */
public final class BareRenderer {
  private BareRenderer() {}

  /** Makes the pages, then times the renderer alone, its classes still cold. */
  public static void main(String[] args) throws IOException {
    TemplateSource templates = TemplateSource.shipped();
    List<PdfOrder> orders =
        List.copyOf(PackageFiles.orders(SampleContent.of(Path.of(args[0])), templates).values());
    PdfRenderer renderer = new PdfRenderer(templates);
    long start = System.nanoTime();
    int pages = 0;
    for (PdfOrder order : orders) {
      pages += renderer.render(order).pages().pageCount();
    }
    System.out.printf(Locale.ROOT, "%.3f%n%d%n", (System.nanoTime() - start) / 1e9, pages);
  }
}
