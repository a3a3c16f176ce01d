package pilefolio.output.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import pilefolio.analysis.sequence.Maturity;
import pilefolio.analysis.sequence.StrengthGain;
import pilefolio.analysis.sequence.StrengthWindow;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Job;
import pilefolio.model.Mix;
import pilefolio.model.StrengthModel;
import pilefolio.model.Submission;
import pilefolio.model.WallRun;
import pilefolio.output.SampleSubmittal;
import pilefolio.output.pdf.DocumentInfo;
import pilefolio.output.pdf.Paper;
import pilefolio.output.pdf.PdfOrder;
import pilefolio.output.pdf.PdfRenderer;
import pilefolio.output.pdf.TemplateSource;
import pilefolio.submittal.Answer;
import pilefolio.submittal.Submittal;
import pilefolio.submittal.ValueText;
import pilefolio.submittal.calculations.CheckView.FigureRef;
import pilefolio.submittal.figure.ConcreteHeadData;
import pilefolio.submittal.figure.Curve.Point;
import pilefolio.submittal.figure.DepthPlotData;
import pilefolio.submittal.figure.FigureContent;
import pilefolio.submittal.figure.JointOverlapData;
import pilefolio.submittal.figure.SlipCircleData;
import pilefolio.submittal.figure.StrengthWindowData;
import pilefolio.units.DisplaySystem;
import pilefolio.units.Unit;
import pilefolio.units.Units;

/** The figures of the sample workbooks: drawn without loss, and saying what the checks say. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SampleFiguresTest {

  /** A sample in a system of units. */
  private record Sample(String name, DisplaySystem system, Submittal submittal) {
    FigureContent content() {
      return FigureContent.of(submittal);
    }

    @Override
    public String toString() {
      return name + " " + system;
    }
  }

  private List<Sample> samples;

  @BeforeAll
  void read() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("sample-input"))) {
      List<String> names =
          files
              .map(file -> file.getFileName().toString())
              .filter(name -> name.endsWith(".xlsx") && !name.startsWith("with-mistakes"))
              .map(name -> name.substring(0, name.length() - ".xlsx".length()))
              .sorted()
              .toList();
      samples =
          names.stream()
              .flatMap(
                  name ->
                      Stream.of(DisplaySystem.values())
                          .map(
                              system -> new Sample(name, system, SampleSubmittal.of(name, system))))
              .toList();
    }
  }

  Stream<Sample> samples() {
    return samples.stream();
  }

  Stream<Arguments> sheets() {
    return samples.stream()
        .flatMap(s -> Stream.of(Arguments.of(s, Paper.A4), Arguments.of(s, Paper.LETTER)));
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void everyFigureIsPrintedWithoutLoss(Sample sample, Paper paper) throws IOException {
    List<Figure> figures = Figures.of(sample.content()).all();
    StringBuilder body = new StringBuilder();
    for (Figure figure : figures) {
      body.append("<div class=\"figure\"><object type=\"figure\" data=\"")
          .append(figure.id())
          .append("\"/><p class=\"caption\">")
          .append(figure.caption())
          .append("</p></div>");
    }
    String xhtml =
        "<html><head><title>f</title><link rel=\"stylesheet\" type=\"text/css\""
            + " href=\"document.css\"/></head><body>"
            + body
            + "</body></html>";
    DocumentInfo info =
        new DocumentInfo("Figures", "", "", "", "en", Instant.parse("2026-01-15T09:00:00Z"));
    byte[] pdf =
        new PdfRenderer(TemplateSource.shipped())
            .render(PdfOrder.of(xhtml, info, paper).figures(figures))
            .content();
    Path out = Path.of("target", "specimen");
    Files.createDirectories(out);
    Files.write(
        out.resolve("figures-" + sample.name() + "-" + sample.system() + "-" + paper + ".pdf"),
        pdf);
  }

  @ParameterizedTest
  @MethodSource("samples")
  void labelsStandClearOfEachOther(Sample sample) {
    for (Figure figure : Figures.of(sample.content()).all()) {
      TextBoxes boxes = new TextBoxes(figure.widthMm(), figure.heightMm());
      figure.draw(boxes);
      assertEquals(List.of(), boxes.overlaps(), figure.id());
    }
  }

  @ParameterizedTest
  @MethodSource("samples")
  void eachFigureHasItsPlace(Sample sample) {
    FigureContent content = sample.content();
    Figures figures = Figures.of(content);
    List<String> ids = figures.all().stream().map(Figure::id).toList();
    List<String> placed =
        figures.placed().values().stream().flatMap(List::stream).map(FigureRef::id).toList();
    assertEquals(ids.size(), new HashSet<>(ids).size(), "ids are unique");
    assertEquals(Set.copyOf(ids), Set.copyOf(placed), "figures of the calculation package");
    List<String> stated = figures.inMethodStatement().stream().map(FigureRef::id).toList();
    assertTrue(ids.containsAll(stated), "figures of the method statement");
    int runs = sample.submittal().job().submission().runs().size();
    Submission described = sample.submittal().job().submission();
    long bored = described.runs().stream().filter(run -> run.type().bored()).count();
    assertEquals(bored, content.plans().size(), "a plan for each bored run");
    assertTrue(content.sections().size() <= runs && !content.sections().isEmpty(), "sections");
    assertEquals(
        described.secantRuns().size(), content.overlaps().size(), "overlap for each secant run");
  }

  private static List<CheckResult> results(Sample sample, String check, String id) {
    String run = id.substring(id.indexOf('-') + 1);
    return sample.submittal().answers(check).stream()
        .map(Answer::result)
        .filter(result -> result.subject().run().equals(run))
        .filter(result -> !result.calculations().isEmpty())
        .toList();
  }

  private static double printed(Sample sample, double si, Unit unit) {
    return sample.system().of(unit).fromSi(si);
  }

  private static String text(Sample sample, double si, Unit unit) {
    return new ValueText(sample.system()).of(si, unit);
  }

  @ParameterizedTest
  @MethodSource("samples")
  void shearAndMomentAreThoseOfTheCheck(Sample sample) {
    for (DepthPlotData plot : sample.content().effects()) {
      if (plot.id().startsWith("apparent-")) {
        continue;
      }
      CheckResult greatest =
          results(sample, "wall-effects", plot.id()).stream()
              .max((a, b) -> Double.compare(a.value("M_E"), b.value("M_E")))
              .orElseThrow();
      same(sample, plot.panels().get(0), greatest.value("V_E"), Units.KN_M);
      same(sample, plot.panels().get(1), greatest.value("M_E"), Units.KNM_M);
    }
  }

  @ParameterizedTest
  @MethodSource("samples")
  void apparentPressureIsThatOfTheChecks(Sample sample) {
    for (DepthPlotData plot : sample.content().effects()) {
      if (!plot.id().startsWith("apparent-")) {
        continue;
      }
      CheckResult greatest =
          results(sample, "apparent-pressure", plot.id()).stream()
              .max((a, b) -> Double.compare(a.value("ΣF"), b.value("ΣF")))
              .orElseThrow();
      CheckResult hinge =
          results(sample, "apparent-hinge", plot.id()).stream()
              .filter(r -> r.subject().equals(greatest.subject()))
              .findFirst()
              .orElseThrow();
      same(sample, plot.panels().get(0), greatest.value("p_l"), Units.KPA);
      same(sample, plot.panels().get(1), hinge.value("M_E"), Units.KNM_M);
    }
  }

  /** The label, the marked point and the greatest value of the curve are the printed result. */
  private static void same(Sample sample, DepthPlotData.Panel panel, double si, Unit unit) {
    double wanted = printed(sample, si, unit);
    DepthPlotData.Extreme extreme = panel.extremes().get(0);
    assertEquals(text(sample, si, unit), extreme.label());
    assertEquals(wanted, Math.abs(extreme.x()), 1e-4 * wanted, "marked point");
    double greatest =
        panel.curves().get(panel.curves().size() - 1).points().stream()
            .mapToDouble(p -> Math.abs(p.x()))
            .max()
            .orElseThrow();
    // The curve is drawn through points; the greatest value may lie between two of them.
    assertEquals(wanted, greatest, 0.02 * wanted, "curve");
  }

  @ParameterizedTest
  @MethodSource("samples")
  void overlapIsThatOfTheCheck(Sample sample) {
    for (JointOverlapData figure : sample.content().overlaps()) {
      CheckResult result = results(sample, "joint-overlap", figure.id()).get(0);
      assertEquals(printed(sample, result.value("c_0"), Units.MM), figure.asSetOut(), 1e-9);
      assertTrue(
          figure.requiredLabel().contains(text(sample, result.value("c_min"), Units.MM)),
          figure.requiredLabel());
      for (var row : result.calculations().get(0).table("levels").rows()) {
        double depth = printed(sample, row.values().get("z"), Units.M);
        double overlap = printed(sample, row.values().get("c_w"), Units.MM);
        assertEquals(overlap, between(figure.deterministic().points(), depth), 1e-6, row.label());
      }
      assertEquals(
          result.value("z_w") <= Math.max(result.value("z_T"), result.value("z_r")),
          !figure.contactLost().isEmpty());
    }
  }

  @ParameterizedTest
  @MethodSource("samples")
  void whatIsMissingIsLeftOut(Sample sample) {
    Submission s = sample.submittal().job().submission();
    Submission bare =
        new Submission(
            s.project(),
            s.basis(),
            s.methods(),
            s.profiles(),
            s.runs(),
            List.of(),
            s.supports(),
            s.beams(),
            s.mixes(),
            s.rigs(),
            s.tools(),
            s.supply(),
            List.of(),
            s.calendar(),
            List.of(),
            s.monitoring(),
            s.people(),
            s.revisions(),
            s.assumptions(),
            s.localLoads());
    Job job = new Job(bare, sample.submittal().job().basis());
    FigureContent content =
        FigureContent.of(Submittal.of(job, List.of(), sample.submittal().engine()));
    assertEquals(List.of(), content.sections(), "no stage, no section");
    assertEquals(List.of(), content.effects());
    assertEquals(List.of(), content.overlaps());
    assertEquals(List.of(), content.programmes(), "no crew, no programme");
    assertEquals(
        s.runs().stream().filter(run -> run.type().bored()).count(), content.plans().size());
    content
        .plans()
        .forEach(plan -> plan.piles().forEach(pile -> assertEquals(0, pile.order(), pile.mark())));
    content.windows().forEach(window -> assertEquals(List.of(), window.planned()));
    assertFalse(Figures.of(content).all().isEmpty());
  }

  @ParameterizedTest
  @MethodSource("samples")
  void slipCircleIsThatOfTheCheckWithTheLeastReserve(Sample sample) {
    assertFalse(sample.content().slips().isEmpty());
    for (SlipCircleData figure : sample.content().slips()) {
      CheckResult governing =
          results(sample, "overall-stability", figure.id()).stream()
              .max(Comparator.comparingDouble(r -> r.verdict().utilisation().orElseThrow()))
              .orElseThrow();
      SlipCircleData.Circle circle = figure.circle();
      assertEquals(printed(sample, governing.value("x_c"), Units.M), circle.x(), 1e-9);
      assertEquals(printed(sample, governing.value("z_c"), Units.M), circle.level(), 1e-9);
      assertEquals(printed(sample, governing.value("R"), Units.M), circle.radius(), 1e-9);
      assertEquals(figure.groundFront(), circle.at(circle.exit()), 1e-6);
      assertEquals(figure.groundBehind(), circle.at(circle.entry()), 1e-6);
      assertTrue(
          figure.caption().contains(String.format(Locale.ROOT, "%.2f", governing.value("F"))));
    }
  }

  @ParameterizedTest
  @MethodSource("samples")
  void concreteEndsAtTheVolumeOfTheCheck(Sample sample) {
    for (ConcreteHeadData figure : sample.content().heads()) {
      CheckResult volume =
          results(sample, "concrete-volume", figure.id()).stream()
              .filter(r -> r.subject().piles().equals("secondaries"))
              .findFirst()
              .orElseThrow();
      CheckResult head =
          results(sample, "casing-head", figure.id()).stream()
              .filter(r -> r.subject().piles().equals("secondaries"))
              .findFirst()
              .orElseThrow();
      List<Point> concrete = figure.curves().get(0).points();
      List<Point> shoe = figure.curves().get(1).points();
      Point last = concrete.get(concrete.size() - 1);
      assertEquals(printed(sample, volume.value("V_a"), Units.M3), last.x(), 1e-9);
      assertEquals(
          printed(sample, head.value("L_T") + volume.value("l_c"), Units.M), last.y(), 1e-9);
      assertEquals(
          printed(sample, head.value("h_c"), Units.M),
          last.y() - shoe.get(shoe.size() - 1).y(),
          1e-9);
    }
  }

  /** The curve comes from the sheet's age for a strength; here the laws are asked the other way. */
  @ParameterizedTest
  @MethodSource("samples")
  void strengthGrowsByTheLawOfTheJob(Sample sample) {
    Submission submission = sample.submittal().job().submission();
    boolean american = submission.methods().strengthModel() == StrengthModel.ACI;
    for (StrengthWindowData figure : sample.content().windows()) {
      String id = figure.id().substring("window-".length());
      WallRun run =
          submission.runs().stream().filter(r -> r.id().equals(id)).findFirst().orElseThrow();
      Mix mix = submission.mix(run.primary());
      StrengthGain gain =
          american
              ? new StrengthGain.AmericanGain(
                  mix.aciA().orElseThrow().si(), mix.aciB().orElseThrow().si())
              : new StrengthGain.EuropeanGain(
                  switch (mix.cement()) {
                    case R -> 0.20;
                    case N -> 0.25;
                    case S -> 0.38;
                  });
      List<Point> points = figure.growth().get(0).points();
      assertTrue(points.size() > 20, "points of the curve: " + points.size());
      for (Point point : points) {
        double wanted =
            StrengthWindow.strengthAt(
                gain,
                mix.strength().si(),
                american ? new Maturity.ActivationEnergy(4000, 20) : new Maturity.EuropeanAge(),
                submission.profile(run).temperature().si(),
                mix.retardation().si() / 3600,
                point.x());
        assertEquals(
            printed(sample, wanted, Units.MPA),
            point.y(),
            1e-6 * printed(sample, mix.strength().si(), Units.MPA),
            "at " + point.x() + " d");
      }
    }
  }

  /** The value of a curve of straight pieces at a depth. */
  private static double between(List<Point> points, double depth) {
    for (int i = 1; i < points.size(); i++) {
      Point a = points.get(i - 1);
      Point b = points.get(i);
      if (depth >= a.y() - 1e-9 && depth <= b.y() + 1e-9) {
        return a.x() + (b.x() - a.x()) * (depth - a.y()) / (b.y() - a.y());
      }
    }
    throw new AssertionError("depth " + depth + " is not drawn");
  }

  @ParameterizedTest
  @MethodSource("samples")
  void pressuresOfTheSectionAreThoseOfTheEquilibrium(Sample sample) {
    for (var section : sample.content().sections()) {
      String run = section.id().substring("section-".length());
      assertFalse(section.pressures().isEmpty(), run);
      Set<String> names = section.layers().stream().map(l -> l.name()).collect(Collectors.toSet());
      assertFalse(names.isEmpty(), run);
      // With several supports the net pressure is drawn below the lowest one only.
      if (section.pressures().size() < 2 || section.supports().size() > 1) {
        continue;
      }
      // Net is behind less in front, wherever one curve has a point.
      var sides = section.pressures().get(0);
      var net = section.pressures().get(1);
      double behind = area(sides.behind().get(0).points());
      double front = area(sides.front().get(0).points());
      double netBehind = area(net.behind().get(0).points());
      double netFront = area(net.front().get(0).points());
      assertEquals(behind - front, netBehind - netFront, 1e-6 * Math.max(behind, front), run);
    }
  }

  private static double area(List<Point> points) {
    double sum = 0;
    for (int i = 1; i < points.size(); i++) {
      Point a = points.get(i - 1);
      Point b = points.get(i);
      sum += (a.x() + b.x()) / 2 * (a.y() - b.y());
    }
    return sum;
  }
}
