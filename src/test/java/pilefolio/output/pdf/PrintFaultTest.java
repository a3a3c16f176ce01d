package pilefolio.output.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.lowagie.text.pdf.PdfReader;
import com.lowagie.text.pdf.parser.PdfTextExtractor;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pilefolio.output.figure.Canvas;
import pilefolio.output.figure.Figure;
import pilefolio.output.figure.Lettering;

/** Everything that would be lost on paper without a word fails the order, with its place. */
class PrintFaultTest {
  @TempDir Path folder;

  private static List<PrintFault> faults(PdfOrder order) {
    return faults(order, TemplateSource.shipped());
  }

  private static List<PrintFault> faults(PdfOrder order, TemplateSource templates) {
    PrintFaultException thrown =
        assertThrows(PrintFaultException.class, () -> new PdfRenderer(templates).render(order));
    return thrown.faults();
  }

  private static void only(List<PrintFault> faults, PrintFault.Kind kind, String where) {
    assertEquals(1, faults.size(), faults.toString());
    assertEquals(kind, faults.get(0).kind());
    assertTrue(faults.get(0).where().contains(where), faults.toString());
  }

  @Test
  void characterTheFaceLacks() {
    List<PrintFault> faults = faults(Specimen.small("<p id=\"a1\">done \u2713 so</p>"));
    only(faults, PrintFault.Kind.MISSING_GLYPH, "#a1");
    assertTrue(faults.get(0).text().contains("U+2713"), faults.toString());
  }

  @Test
  void characterTheFaceLacksInTheFooter() {
    String body = "<div class=\"footer\"><table><tr><td>\u2713</td></tr></table></div><p>text</p>";
    List<PrintFault> faults = faults(Specimen.small(body));
    assertEquals(PrintFault.Kind.MISSING_GLYPH, faults.get(0).kind());
  }

  @Test
  void characterTheFaceLacksInFormula() {
    String body = "<p id=\"a2\">" + Specimen.math("x = \u2713", "x") + "</p>";
    only(faults(Specimen.small(body)), PrintFault.Kind.MISSING_GLYPH, "#a2");
  }

  @Test
  void fontThatIsNotEmbedded() {
    String body = "<p style=\"font-family: Garamond\">text</p>";
    List<PrintFault> faults = faults(Specimen.small(body));
    assertEquals(1, faults.size(), faults.toString());
    assertEquals(PrintFault.Kind.UNKNOWN_FONT, faults.get(0).kind());
    assertEquals("Garamond", faults.get(0).text());
  }

  @Test
  void wordWiderThanThePage() {
    String word = "W".repeat(200);
    only(
        faults(Specimen.small("<p id=\"a3\" class=\"nobr\">" + word + "</p>")),
        PrintFault.Kind.OVERFLOW,
        "#a3");
  }

  @Test
  void longWordIsBrokenRatherThanLost() throws IOException {
    String body =
        "<p>"
            + "W".repeat(200)
            + "</p><table class=\"data\"><tr><td style=\"width:10mm\">"
            + "V".repeat(40)
            + "</td><td>next</td></tr></table>";
    byte[] pdf = new PdfRenderer(TemplateSource.shipped()).render(Specimen.small(body)).content();
    String text = new PdfTextExtractor(new PdfReader(pdf)).getTextFromPage(1);
    assertEquals(200, text.chars().filter(c -> c == 'W').count());
    assertEquals(40, text.chars().filter(c -> c == 'V').count());
  }

  @Test
  void tablePushedOffThePage() {
    String body =
        "<table id=\"a4\" style=\"width:100%;margin-left:20mm\"><tr><td>left</td>"
            + "<td style=\"text-align:right\">right</td></tr></table>";
    List<PrintFault> faults = faults(Specimen.small(body));
    only(faults, PrintFault.Kind.OVERFLOW, "#a4");
    assertEquals("right", faults.get(0).text());
  }

  @Test
  void wordWiderThanItsColumn() {
    String body =
        "<table class=\"data\"><tr><td id=\"a5\" class=\"nobr\" style=\"width:10mm\">Unbreakableword</td>"
            + "<td>next</td></tr></table>";
    only(faults(Specimen.small(body)), PrintFault.Kind.OVERFLOW, "#a5");
  }

  @Test
  void formulaWiderThanItsColumn() {
    String body =
        "<table class=\"data\"><tr><td id=\"a6\" style=\"width:10mm\">"
            + Specimen.math("\\frac{a+b+c+d+e+f+g+h}{2}", "(a+b)/2")
            + "</td><td>next</td></tr></table>";
    only(faults(Specimen.small(body)), PrintFault.Kind.OVERFLOW, "#a6");
  }

  @Test
  void figureThatWasNotGiven() {
    only(
        faults(Specimen.small("<div id=\"a7\"><object type=\"figure\" data=\"none\"/></div>")),
        PrintFault.Kind.MISSING_FIGURE,
        "#a7");
  }

  @Test
  void figureTallerThanThePage() {
    PdfOrder order =
        Specimen.small("<div id=\"a8\"><object type=\"figure\" data=\"tower\"/></div>")
            .figures(List.of(new Sheet("tower", 50, 400)));
    only(faults(order), PrintFault.Kind.SPLIT, "#a8");
  }

  @Test
  void labelPastTheEdgeOfItsFigure() {
    PdfOrder order =
        Specimen.small("<div id=\"a9\"><object type=\"figure\" data=\"small\"/></div>")
            .figures(List.of(new Sheet("small", 10, 10)));
    List<PrintFault> faults = faults(order);
    only(faults, PrintFault.Kind.OVERFLOW, "#a9");
    assertTrue(faults.get(0).text().contains("a label of some length"), faults.toString());
  }

  @Test
  void linkThatLeadsNowhere() {
    only(
        faults(Specimen.small("<p id=\"b1\">see <a href=\"#gone\">there</a></p>")),
        PrintFault.Kind.MISSING_TARGET,
        "#b1");
  }

  @Test
  void idUsedTwice() {
    only(
        faults(Specimen.small("<p id=\"b2\">one</p><p id=\"b2\">two</p>")),
        PrintFault.Kind.DUPLICATE_ID,
        "#b2");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "\\frac{a}",
        "a}",
        "\\unknown{a}",
        "a_",
        "\\left( a",
        "x^2^3",
        "{a",
        "\\sqrt[3",
        "\\"
      })
  void formulaThatCannotBeRead(String tex) {
    List<PrintFault> faults =
        faults(Specimen.small("<p id=\"b3\">" + Specimen.math(tex, "a") + "</p>"));
    only(faults, PrintFault.Kind.BAD_FORMULA, "#b3");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"<p>open", "<!DOCTYPE html><html><body/></html>", "<p>&nbsp;</p>", "<p>a & b</p>"})
  void sourceThatIsNotWellFormed(String source) {
    List<PrintFault> faults = faults(PdfOrder.of(source, Specimen.INFO, Paper.A4));
    only(faults, PrintFault.Kind.MALFORMED, "line 1");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"/etc/hostname", "file:/etc/hostname", "../pom.xml", "http://localhost:1/x.png"})
  void fileOutsideTheTemplates(String source) {
    List<PrintFault> faults =
        faults(Specimen.small("<p><img src=\"" + source + "\" alt=\"\"/></p>"));
    assertEquals(1, faults.size(), faults.toString());
    assertEquals(PrintFault.Kind.MISSING_RESOURCE, faults.get(0).kind());
    assertEquals(source, faults.get(0).text());
  }

  @Test
  void errorInStyleSheetOfTheFirm() throws IOException {
    Files.writeString(folder.resolve("document.css"), "p { colour: red; } body { margin: 0 }");
    List<PrintFault> faults = faults(Specimen.small("<p>text</p>"), TemplateSource.folder(folder));
    assertFalse(faults.isEmpty());
    assertEquals(PrintFault.Kind.BAD_STYLE, faults.get(0).kind());
    assertTrue(faults.get(0).where().contains("document.css"), faults.toString());
  }

  @Test
  void styleTheLayoutStumblesOver() {
    String body =
        "<p><span style=\"vertical-align:bottom\">m<span style=\"vertical-align:1pt\">2</span>"
            + "</span></p>";
    List<PrintFault> faults = faults(Specimen.small(body));
    assertEquals(1, faults.size(), faults.toString());
    assertEquals(PrintFault.Kind.BAD_STYLE, faults.get(0).kind());
  }

  @Test
  void folderOfTheFirmGoesBeforeTheShippedSheet() throws IOException {
    Files.writeString(
        folder.resolve("document.css"), "body { font-family: 'Liberation Mono'; margin: 0 }");
    byte[] own =
        new PdfRenderer(TemplateSource.folder(folder))
            .render(Specimen.small("<p>text</p>"))
            .content();
    String names = new String(own, java.nio.charset.StandardCharsets.ISO_8859_1);
    assertTrue(names.contains("LiberationMono"));
    assertFalse(names.contains("LiberationSans"));
  }

  @Test
  void allFaultsAreToldAtOnce() {
    String body =
        "<p id=\"c1\">\u2713</p><p id=\"c2\"><a href=\"#gone\">x</a></p><p id=\"c3\" class=\"nobr\">"
            + "W".repeat(200)
            + "</p>";
    List<PrintFault> faults = faults(Specimen.small(body));
    assertEquals(
        List.of(
            PrintFault.Kind.MISSING_TARGET,
            PrintFault.Kind.MISSING_GLYPH,
            PrintFault.Kind.OVERFLOW),
        faults.stream().map(PrintFault::kind).toList());
  }

  private record Sheet(String id, double widthMm, double heightMm) implements Figure {
    @Override
    public String caption() {
      return "sheet";
    }

    @Override
    public void draw(Canvas canvas) {
      canvas.text(5, 5, "a label of some length", Lettering.LABEL);
    }
  }
}
