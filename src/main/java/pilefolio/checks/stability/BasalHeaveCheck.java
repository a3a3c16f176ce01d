package pilefolio.checks.stability;

import static pilefolio.units.Units.KN_M3;
import static pilefolio.units.Units.KPA;
import static pilefolio.units.Units.M;
import static pilefolio.units.Units.ONE;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import pilefolio.analysis.stability.HeaveFactors;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck;
import pilefolio.checks.situation.DesignSituation;
import pilefolio.model.Value;
import pilefolio.model.WallRun;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Calculation;
import pilefolio.trace.Given;
import pilefolio.trace.Reference;

/** Undrained ground flows under the wall and lifts the base of the excavation. */
final class BasalHeaveCheck extends RunCheck {
  private static final double KILO = 1000;
  private static final Reference TERZAGHI =
      Reference.memory("Terzaghi (1943), Theoretical Soil Mechanics", "");
  private static final Reference CHART =
      Reference.memory("Bjerrum and Eide (1956), Géotechnique 6(1)", "");
  private static final Reference SKEMPTON = Reference.memory("Skempton (1951)", "");

  static final CalcSheet DRIVEN =
      terzaghi("Heave of the base after Terzaghi")
          .line("F = q_f/p", ONE, "factor of safety", TERZAGHI)
          .require("F ≥ F_b", "the base does not heave", TERZAGHI);

  static final CalcSheet HELD =
      terzaghi("Heave of the base after Terzaghi, no driving pressure")
          .note("Strength along the side of the column carries all of its weight: no driving.")
          .require("F_b·p ≤ q_f", "the base does not heave", TERZAGHI);

  private static CalcSheet terzaghi(String title) {
    return CalcSheet.named(title)
        .given("B", M, "width of the excavation")
        .given("D_h", M, "depth of stiffer ground below the base")
        .given("H", M, "depth of the excavation")
        .given("γ", KN_M3, "mean unit weight beside it, factored")
        .given("q", KPA, "load beside it, factored")
        .given("s_u", KPA, "mean design strength below the base, over B_1")
        .given("s_v", KPA, "mean design strength beside the excavation; drained layers count none")
        .given("F_b", ONE, "least factor")
        .line("B_1 = min(B/√(2), D_h)", M, "width of the column that drives", TERZAGHI)
        .line("p = γ·H + q − s_v·H/B_1", KPA, "pressure that drives", TERZAGHI)
        .line("q_f = 5.7·s_u", KPA, "bearing capacity of the base", TERZAGHI);
  }

  static final CalcSheet LONG = chart("Heave of a deep base, long excavation", false);
  static final CalcSheet RECTANGLE = chart("Heave of a deep base, rectangle", true);

  private static CalcSheet chart(String title, boolean rectangle) {
    CalcSheet sheet =
        CalcSheet.named(title)
            .given("B", M, "width of the excavation")
            .given("H", M, "depth of the excavation")
            .given("γ", KN_M3, "mean unit weight beside it, factored")
            .given("q", KPA, "load beside it, factored")
            .given("s_u", KPA, "mean design strength below the base")
            .given("F_b", ONE, "least factor")
            .line("r = H/B", ONE, "depth over width", Reference.DERIVED)
            .condition("r > 1", "the chart is for excavations deeper than wide", CHART);
    if (rectangle) {
      sheet =
          sheet
              .given("L", M, "length of the excavation")
              .given("N_{c,sq}", ONE, "chart at r, square")
              .line("N_c = N_{c,sq}·(0.84 + 0.16·B/L)", ONE, "bearing factor", CHART)
              .line(
                  "N_{c,2} = 5·(1 + 0.2·min(r, 2.5))·(1 + 0.2·B/L)",
                  ONE,
                  "the same in closed form, for comparison",
                  SKEMPTON);
    } else {
      sheet =
          sheet
              .given("N_c", ONE, "chart at r, strip")
              .line(
                  "N_{c,2} = 5·(1 + 0.2·min(r, 2.5))",
                  ONE,
                  "the same in closed form, for comparison",
                  SKEMPTON);
    }
    return sheet
        .line("F = N_c·s_u/(γ·H + q)", ONE, "factor of safety", CHART)
        .require("F ≥ F_b", "the base does not heave", CHART);
  }

  BasalHeaveCheck() {
    super(
        "basal-heave",
        "Heave of the base in undrained ground",
        Family.STABILITY,
        DRIVEN,
        HELD,
        LONG,
        RECTANGLE);
  }

  @Override
  protected List<CheckResult> check(Job job, WallRun run) {
    List<CheckResult> results = new ArrayList<>();
    for (DesignSituation s : LowestStages.of(job, run)) {
      BaseOfExcavation base = BaseOfExcavation.of(s);
      if (base.undrained()) {
        results.add(result(job, run, base));
      }
    }
    return results;
  }

  private CheckResult result(Job job, WallRun run, BaseOfExcavation base) {
    DesignSituation s = base.situation();
    OptionalDouble stiff = base.stiffLayer();
    if (run.analysis().excavationWidth().isEmpty() && stiff.isEmpty()) {
      return CheckResult.notChecked(
          this, s.subject(), "The workbook does not give the width of the excavation.");
    }
    double known = s.profile().base().si();
    double toStiff = base.base() - stiff.orElse(Double.NEGATIVE_INFINITY);
    double width = run.analysis().excavationWidth().map(Value::si).orElse(Math.sqrt(2) * toStiff);
    double column = Math.min(width / Math.sqrt(2), toStiff);
    if (base.base() - column < known - 1e-9) {
      return CheckResult.notChecked(
          this, s.subject(), "the ground is not known as deep as a heave would reach");
    }
    Given depthToStiff =
        stiff.isPresent()
            ? From.layout(toStiff, "first layer below that does not act undrained")
            : From.layout(base.base() - known, "none found; ground known to this depth");
    Given shownWidth =
        run.analysis()
            .excavationWidth()
            .map(From::cell)
            .orElseGet(() -> From.layout(width, "not given; wide enough for D_h to count"));
    Beside beside = Beside.of(base);
    Given strength =
        From.layout(
            KILO * base.meanStrength(base.base(), base.base() - column), "layers below the base");
    Given required = From.factor(job, "heave.basal.safety", s.combination().id());
    double side = KILO * base.meanStrength(base.base() + beside.depth(), base.base());
    boolean driven =
        beside.weight() * beside.depth() + beside.load() > side * beside.depth() / column;
    List<Calculation> sheets = new ArrayList<>();
    sheets.add(
        (driven ? DRIVEN : HELD)
            .bind()
            .set("B", shownWidth)
            .set("D_h", depthToStiff)
            .set("H", From.layout(beside.depth(), "ground behind to design excavation level"))
            .set("γ", From.layout(beside.weight(), "layers beside the excavation"))
            .set("q", From.layout(beside.load(), "surcharge of the stage"))
            .set("s_u", strength)
            .set("s_v", From.layout(side, "layers beside the excavation"))
            .set("F_b", required)
            .calculate());
    if (beside.depth() > width && run.analysis().excavationWidth().isPresent()) {
      sheets.add(deep(run, beside, strength, required));
    }
    return CheckResult.of(this, s.subject(), sheets);
  }

  /**
   * What weighs beside the excavation, coherent SI.
   *
   * @param depth of the excavation, m
   * @param weight mean unit weight, N/m³
   * @param load on the surface, Pa
   */
  private record Beside(double depth, double weight, double load) {
    static Beside of(BaseOfExcavation base) {
      DesignSituation s = base.situation();
      double ground = s.run().levels().retained().si();
      double permanent = s.factor("overall.permanent");
      double weight =
          KILO * permanent * base.meanWeight(ground, base.base(), SlipModel.waterBehind(s));
      double load =
          permanent * s.stage().permanentSurcharge().si()
              + s.factor("overall.variable") * s.stage().variableSurcharge().si();
      return new Beside(ground - base.base(), weight, load);
    }
  }

  private static Calculation deep(WallRun run, Beside beside, Given strength, Given required) {
    Value width = run.analysis().excavationWidth().orElseThrow();
    double ratio = beside.depth() / width.si();
    boolean rectangle =
        run.analysis().excavationLength().map(l -> l.si() >= width.si()).orElse(false);
    var binding =
        (rectangle ? RECTANGLE : LONG)
            .bind()
            .set("B", From.cell(width))
            .set("H", From.layout(beside.depth(), "ground behind to design excavation level"))
            .set("γ", From.layout(beside.weight(), "layers beside the excavation"))
            .set("q", From.layout(beside.load(), "surcharge of the stage"))
            .set("s_u", strength)
            .set("F_b", required);
    if (rectangle) {
      binding
          .set("L", From.cell(run.analysis().excavationLength().orElseThrow()))
          .set(
              "N_{c,sq}",
              From.table(HeaveFactors.bjerrumEideSquare(ratio), "chart", "square, at H/B"));
    } else {
      binding.set(
          "N_c", From.table(HeaveFactors.bjerrumEideStrip(ratio), "chart", "strip, at H/B"));
    }
    return binding.calculate();
  }
}
