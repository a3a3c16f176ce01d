package pilefolio.output.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.lowagie.text.pdf.PdfReader;
import com.lowagie.text.pdf.parser.PdfTextExtractor;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pilefolio.output.pdf.DocumentInfo;
import pilefolio.output.pdf.Paper;
import pilefolio.output.pdf.PdfOrder;
import pilefolio.output.pdf.PdfRenderer;
import pilefolio.output.pdf.RenderedPdf;
import pilefolio.output.pdf.TemplateSource;
import pilefolio.submittal.figure.SitePlanData;

/** Every figure printed at ordinary and at extreme size; the printer refuses lost labels. */
class FiguresTest {
  private static RenderedPdf pdf;

  @BeforeAll
  static void print() throws IOException {
    StringBuilder body = new StringBuilder();
    for (Figure figure : Scenes.all()) {
      body.append("<div class=\"chapter\"><div class=\"figure\" id=\"f-")
          .append(figure.id())
          .append("\"><object type=\"figure\" data=\"")
          .append(figure.id())
          .append("\"/><p class=\"caption\">")
          .append(figure.caption())
          .append("</p></div></div>");
    }
    String xhtml =
        "<html><head><title>f</title><link rel=\"stylesheet\" type=\"text/css\""
            + " href=\"document.css\"/></head><body>"
            + body
            + "</body></html>";
    DocumentInfo info =
        new DocumentInfo("Figures", "", "", "", "en", Instant.parse("2026-01-15T09:00:00Z"));
    pdf =
        new PdfRenderer(TemplateSource.shipped())
            .render(PdfOrder.of(xhtml, info, Paper.A4).figures(Scenes.all()));
    Path out = Path.of("target", "specimen");
    Files.createDirectories(out);
    Files.write(out.resolve("figures.pdf"), pdf.content());
  }

  static Stream<Figure> figures() {
    return Scenes.all().stream();
  }

  private static String text(String id) throws IOException {
    int page = pdf.pages().pageOf("f-" + id).orElseThrow();
    return new PdfTextExtractor(new PdfReader(pdf.content())).getTextFromPage(page);
  }

  @ParameterizedTest
  @MethodSource("figures")
  void figureFitsOnePage(Figure figure) {
    assertTrue(figure.widthMm() <= 170, "width of the text");
    assertTrue(figure.heightMm() <= 212, figure.id() + " is " + figure.heightMm() + " mm high");
  }

  @ParameterizedTest
  @MethodSource("figures")
  void labelsStandClearOfEachOther(Figure figure) {
    TextBoxes boxes = new TextBoxes(figure.widthMm(), figure.heightMm());
    figure.draw(boxes);
    assertTrue(boxes.count() > 10, "labels drawn: " + boxes.count());
    assertEquals(List.of(), boxes.overlaps());
  }

  @Test
  void everyPileHasItsMarkAndOrderOnThePlan() throws IOException {
    String text = text("plan-large");
    for (SitePlanData.PlanPile pile : Scenes.plan("x", 91, true).piles()) {
      assertTrue(text.matches("(?s).*\\b" + pile.mark() + "\\b.*"), pile.mark());
      assertTrue(text.matches("(?s).*\\b" + pile.order() + "\\b.*"), "order " + pile.order());
    }
  }

  @Test
  void longWallGoesOnWithTheNextSheet() throws IOException {
    List<SitePlanFigure> sheets = SitePlanFigure.sheets(Scenes.plan("plan-long", 240, true));
    assertTrue(sheets.size() >= 2, "sheets: " + sheets.size());
    StringBuilder text = new StringBuilder();
    for (Figure sheet : sheets) {
      text.append(text(sheet.id()));
    }
    for (SitePlanData.PlanPile pile : Scenes.plan("x", 240, true).piles()) {
      assertTrue(text.toString().matches("(?s).*\\b" + pile.mark() + "\\b.*"), pile.mark());
    }
  }

  @Test
  void everyDayOfAYearIsShown() {
    List<ProgrammeFigure> sheets =
        ProgrammeFigure.sheets(Scenes.programme("programme-year", 365, 12));
    int numbers = 0;
    for (Figure sheet : sheets) {
      TextBoxes boxes = new TextBoxes(sheet.widthMm(), sheet.heightMm());
      sheet.draw(boxes);
      numbers += boxes.countMatching("[0-9]+");
    }
    assertEquals(365, numbers);
  }

  @Test
  void everyLayerAndLevelIsNamedOnTheSection() throws IOException {
    String text = text("section-full");
    var data = Scenes.section("x", 10, 2, true);
    data.layers().forEach(layer -> assertTrue(text.contains(layer.name()), layer.name()));
    data.levels().forEach(mark -> assertTrue(text.contains(mark.label()), mark.label()));
  }

  @Test
  void planWithoutPilesIsRefused() {
    SitePlanData one = Scenes.plan("x", 1, false);
    assertThrows(IllegalArgumentException.class, () -> SitePlanFigure.sheets(one));
  }
}
