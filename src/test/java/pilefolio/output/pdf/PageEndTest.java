package pilefolio.output.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.lowagie.text.pdf.PdfReader;
import com.lowagie.text.pdf.parser.PdfTextExtractor;
import java.io.IOException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What belongs together stays on one page wherever the page ends. */
class PageEndTest {
  private static final PdfRenderer RENDERER = new PdfRenderer(TemplateSource.shipped());

  @ParameterizedTest
  @ValueSource(ints = {0, 3, 6, 9, 12, 15, 18, 21})
  void lineOfCalculationStaysWithWhatItIs(int shift) throws IOException {
    String[] lines = new String[60];
    for (int i = 0; i < lines.length; i++) {
      lines[i] =
          Specimen.line(
              "ref", "what" + i + "x", "a_{" + i + "} = \\frac{b}{c}", "a = b/c", "res" + i + "x");
    }
    String body =
        "<div style=\"height:" + shift + "mm\"></div>" + Specimen.calc(lines) + "<p>end</p>";
    RenderedPdf pdf = RENDERER.render(Specimen.small(body));
    assertTrue(pdf.pages().pageCount() > 1, "must reach a second page");
    PdfTextExtractor text = new PdfTextExtractor(new PdfReader(pdf.content()));
    int seen = 0;
    for (int page = 1; page <= pdf.pages().pageCount(); page++) {
      String shown = text.getTextFromPage(page);
      assertTrue(shown.contains("Reference"), "head of the sheet on page " + page);
      Matcher what = Pattern.compile("what(\\d+)x").matcher(shown);
      while (what.find()) {
        seen++;
        assertTrue(shown.contains("res" + what.group(1) + "x"), "line " + what.group(1));
      }
    }
    assertEquals(60, seen, "each line once");
  }

  @ParameterizedTest
  @ValueSource(ints = {195, 200, 205, 210, 215, 220, 225, 230, 235, 240})
  void headingStaysWithItsFirstBlock(int shift) throws IOException {
    String body =
        "<div style=\"height:"
            + shift
            + "mm\">above</div><div class=\"k\"><h2>Stranded?</h2><p>first block</p></div>";
    RenderedPdf pdf = RENDERER.render(Specimen.small(body));
    PdfTextExtractor text = new PdfTextExtractor(new PdfReader(pdf.content()));
    int together = 0;
    for (int page = 1; page <= pdf.pages().pageCount(); page++) {
      String shown = text.getTextFromPage(page);
      assertEquals(shown.contains("Stranded?"), shown.contains("first block"), "page " + page);
      together += shown.contains("Stranded?") ? 1 : 0;
    }
    assertEquals(1, together);
  }

  @ParameterizedTest
  @ValueSource(ints = {10, 60, 120, 180})
  void figureStaysWithItsCaption(int shift) throws IOException {
    String body =
        "<div style=\"height:"
            + shift
            + "mm\">above</div><div class=\"figure\"><object type=\"figure\" data=\"sketch\"/>"
            + "<p class=\"caption\">the caption</p></div>";
    RenderedPdf pdf =
        RENDERER.render(Specimen.small(body).figures(java.util.List.of(new Specimen.Sketch())));
    PdfTextExtractor text = new PdfTextExtractor(new PdfReader(pdf.content()));
    for (int page = 1; page <= pdf.pages().pageCount(); page++) {
      String shown = text.getTextFromPage(page);
      assertEquals(shown.contains("610"), shown.contains("the caption"), "page " + page);
    }
  }
}
