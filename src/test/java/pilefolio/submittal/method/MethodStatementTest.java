package pilefolio.submittal.method;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Map;
import org.junit.jupiter.api.Test;
import pilefolio.model.Technique;
import pilefolio.output.pdf.DocumentInfo;
import pilefolio.output.pdf.Paper;
import pilefolio.output.pdf.PdfOrder;
import pilefolio.output.pdf.PdfRenderer;
import pilefolio.output.pdf.TemplateSource;
import pilefolio.output.pdf.Templates;
import pilefolio.submittal.Submittal;

class MethodStatementTest {
  private static final Templates TEMPLATES = new Templates(TemplateSource.shipped());

  static String text(Submittal submittal) {
    return TEMPLATES.fill(
        "method-statement.ftlx", Map.of("content", MethodStatement.of(submittal)));
  }

  private static byte[] pdf(String name, String xhtml) {
    DocumentInfo info =
        new DocumentInfo(
            "Method statement", "", "", "", "en-GB", Instant.parse("2027-03-01T00:00:00Z"));
    byte[] pdf =
        new PdfRenderer(TemplateSource.shipped())
            .render(PdfOrder.of(xhtml, info, Paper.A4))
            .content();
    try {
      Path out = Files.createDirectories(Path.of("target", "method"));
      Files.write(out.resolve(name + ".pdf"), pdf);
      return pdf;
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  @Test
  void prints() {
    pdf("small", text(Scenario.small().submittal()));
    pdf("cased", text(Scenario.small().bored(Technique.CASED_AUGER).submittal()));
    String uncased = text(Scenario.small().bored(Technique.UNCASED_AUGER).submittal());
    assertTrue(pdf("uncased", uncased).length > 0);
  }
}
