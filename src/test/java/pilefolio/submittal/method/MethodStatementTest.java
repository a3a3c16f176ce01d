package pilefolio.submittal.method;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pilefolio.model.PaperSize;
import pilefolio.model.Technique;
import pilefolio.output.pdf.DocumentInfo;
import pilefolio.output.pdf.Paper;
import pilefolio.output.pdf.PdfOrder;
import pilefolio.output.pdf.PdfRenderer;
import pilefolio.output.pdf.TemplateSource;
import pilefolio.output.pdf.Templates;
import pilefolio.submittal.Submittal;
import pilefolio.units.DisplaySystem;

class MethodStatementTest {
  private static final Templates TEMPLATES = new Templates(TemplateSource.shipped());

  static String text(Submittal submittal) {
    return TEMPLATES.fill(
        "method-statement.ftlx", Map.of("content", MethodStatement.of(submittal)));
  }

  /** Prints and keeps the file in target/method, to be looked at. */
  private static byte[] pdf(String name, Submittal submittal) {
    DocumentInfo info =
        new DocumentInfo(
            "Method statement", "", "", "", "en-GB", Instant.parse("2027-03-01T00:00:00Z"));
    boolean a4 = submittal.job().submission().project().paper() == PaperSize.A4;
    byte[] pdf =
        new PdfRenderer(TemplateSource.shipped())
            .render(PdfOrder.of(text(submittal), info, a4 ? Paper.A4 : Paper.LETTER))
            .content();
    try {
      Path out = Files.createDirectories(Path.of("target", "method"));
      Files.write(out.resolve(name + ".pdf"), pdf);
      return pdf;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"ten-piles", "river-street-pump-station", "car-park-basement"})
  void samplesPrint(String sample) {
    assertTrue(pdf(sample, Scenario.sample(sample).submittal()).length > 0);
  }

  private static final Pattern BOX =
      Pattern.compile("<div class=\"stop\">.*?</div>", Pattern.DOTALL);

  private static String words(String xhtml) {
    // A check of supports is called so whatever the support.
    return xhtml
        .replaceAll("(?s)<head>.*?</head>", "")
        .replaceAll("<[^>]*>", " ")
        .replaceAll("(?i)(force in a|the) prop or anchor", "");
  }

  private static void has(String text, String pattern) {
    assertTrue(Pattern.compile(pattern).matcher(text).find(), "missing: " + pattern);
  }

  private static void lacks(String text, String pattern) {
    Matcher found = Pattern.compile(".{0,60}" + pattern + ".{0,40}").matcher(text);
    assertFalse(found.find(), () -> "not of this job: " + found.group());
  }

  @Test
  void aCasedJobSaysNothingOfUncasedPiles() {
    Submittal submittal = Scenario.small().bored(Technique.CASED_AUGER).submittal();
    String text = words(text(submittal));
    has(text, "Cased auger piles");
    has(text, "[Cc]asing shoe");
    lacks(text, "(?i)uncased");
    assertTrue(pdf("cased", submittal).length > 0);
  }

  @Test
  void anUncasedJobSaysNothingOfCasings() {
    String text = words(text(Scenario.small().bored(Technique.UNCASED_AUGER).submittal()));
    has(text, "Uncased auger piles");
    lacks(text, "(?i)\\bcasings?\\b");
    lacks(text, "\\b[Cc]ased\\b");
  }

  @Test
  void aCantileverHasNeitherPropsNorAnchors() {
    String text = words(text(Scenario.small().unsupported().submittal()));
    lacks(text, "(?i)\\bprop(s|ped)?\\b");
    lacks(text, "(?i)\\banchors?\\b");
    has(text, "stands without support");
  }

  @Test
  void aSupportIsNamedAfterItsKind() {
    Submittal propped = Scenario.sample("car-park-basement").submittal();
    String text = words(text(propped));
    has(text, "Prop dropped");
    lacks(text, "(?i)\\banchors?\\b");
    String anchored = words(text(Scenario.sample("river-street-pump-station").submittal()));
    has(anchored, "Anchor or jack fails");
    lacks(anchored, "(?i)\\bprops?\\b");
  }

  @Test
  void withoutNeighboursNothingIsSaidOfThem() {
    Submittal submittal = Scenario.small().neighbours(List.of()).monitoring(List.of()).submittal();
    String text = words(text(submittal));
    lacks(text, "\\b[Nn]eighbours\\b");
    lacks(text, "Neighbouring building");
    lacks(text, "(?i)overhead line");
    lacks(text, "(?i)railway");
    lacks(text, "(?i)watercourse");
    lacks(text, "(?i)trigger reached");
    has(text, "No monitoring is named in the workbook");
    assertTrue(pdf("alone", submittal).length > 0);
  }

  @Test
  void movementExpectedStandsBesideTheTriggers() {
    has(
        words(text(Scenario.small().submittal())),
        "The movement expected at each instrument is calculated");
  }

  @Test
  void aJobWithoutOrderSaysSoFirst() {
    Submittal submittal = Scenario.small().slowConcrete().submittal();
    String xhtml = text(submittal);
    has(xhtml, "no programme found");
    Matcher boxes = BOX.matcher(xhtml);
    assertTrue(boxes.find());
    has(words(boxes.group()), "Not for construction");
    has(words(boxes.group()), "No order of the piles was found");
    String text = words(xhtml);
    has(text, "No programme was found");
    has(text, "No programme: order and days are open");
    lacks(text, "Every answer of the calculations is satisfied");
    assertTrue(pdf("no-order", submittal).length > 0);
  }

  @Test
  void whatIsNotSatisfiedStandsInTheFirstBox() {
    String xhtml = text(Scenario.small().weakRigs().submittal());
    Matcher boxes = BOX.matcher(xhtml);
    assertTrue(boxes.find());
    String box = words(boxes.group());
    has(box, "Pull with a stuck auger");
    has(box, "not satisfied");
    assertTrue(boxes.start() < xhtml.indexOf("id=\"control\""), "after the first chapter");
    lacks(words(xhtml), "Every answer of the calculations is satisfied");
  }

  @Test
  void missingRolesAreNamed() {
    String text = words(text(Scenario.small().people(List.of()).submittal()));
    has(text, "To be named before work starts:\\s+design engineer of the wall, Site engineer");
  }

  @Test
  void theSameJobGivesTheSameText() {
    assertEquals(text(Scenario.small().submittal()), text(Scenario.small().submittal()));
  }

  @Test
  void itPrintsInUsUnits() {
    Submittal submittal = Scenario.small().in(DisplaySystem.US).submittal();
    String text = words(text(submittal));
    has(text, "D \\+ 1 in to D \\+ 2 in");
    lacks(text, " kPa\\b");
    assertTrue(pdf("us", submittal).length > 0);
  }
}
