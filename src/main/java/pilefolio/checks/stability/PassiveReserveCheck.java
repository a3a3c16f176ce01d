package pilefolio.checks.stability;

import static pilefolio.units.Units.KNM_M;
import static pilefolio.units.Units.KPA;
import static pilefolio.units.Units.M;
import static pilefolio.units.Units.ONE;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import pilefolio.analysis.earth.Mobilisation;
import pilefolio.analysis.earth.PressureDiagram;
import pilefolio.analysis.earth.PressureNode;
import pilefolio.analysis.earth.PressureSegment;
import pilefolio.analysis.wall.WallLoading;
import pilefolio.checks.Check;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.Subject;
import pilefolio.checks.situation.DesignSituation;
import pilefolio.checks.situation.RunDesign;
import pilefolio.checks.situation.WallSolution;
import pilefolio.model.Support;
import pilefolio.model.WallRun;
import pilefolio.trace.Binding;
import pilefolio.trace.Binding.Row;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.CalcTable;
import pilefolio.trace.Calculation;
import pilefolio.trace.Given;
import pilefolio.trace.Reference;
import pilefolio.trace.Source;

/**
 * Factor of safety on passive earth pressure at the toe that is built: the passive moment over the
 * moment it must balance, about the support or, for a cantilever, about the toe.
 */
public final class PassiveReserveCheck implements Check {
  private static final String TABLE = "pressures";
  private static final double KILO = 1000;
  private static final Reference RATIO = Reference.read("UFC 3-220-20 (2025)", "Eq. 4-29");

  static final CalcSheet SUPPORTED =
      sheet("Passive reserve about the support", "(z_m − z_1)", "(z_m − z_2)");
  static final CalcSheet LOWEST =
      sheet("Passive reserve below the lowest support", "(z_m − z_1)", "(z_m − z_2)");
  static final CalcSheet CANTILEVER =
      sheet("Passive reserve about the toe", "(z_1 − z_m)", "(z_2 − z_m)");

  /** How a wall turns when passive pressure is used up. */
  public enum Turning {
    /** A cantilever about its toe. */
    ABOUT_TOE,
    /** A wall with one support about it. */
    ABOUT_SUPPORT,
    /** The part below the lowest of several supports about that one. */
    BELOW_LOWEST
  }

  private static CalcSheet sheet(String title, String a, String b) {
    return CalcSheet.named(title)
        .given("z_m", M, "level about which moments are taken")
        .given("F_r", ONE, "factor required")
        .note(
            "Pressures down to the toe that is built, passive earth pressure without its divisor."
                + " Water in front is taken off the load and not counted as resistance.")
        .table(
            CalcTable.of(TABLE, "Moments about the level above", "layer")
                .given("z_1", M, "level of the top")
                .given("z_2", M, "level of the bottom")
                .given("p_{b,1}", KPA, "behind, top")
                .given("p_{b,2}", KPA, "behind, bottom")
                .given("u_{f,1}", KPA, "water in front, top")
                .given("u_{f,2}", KPA, "water in front, bottom")
                .given("p_{p,1}", KPA, "passive earth pressure, top")
                .given("p_{p,2}", KPA, "passive earth pressure, bottom")
                .line(
                    EmbedmentSheet.moment("M_b", "p_{b,1}", "p_{b,2}", a, b),
                    KNM_M,
                    "moment behind",
                    Reference.DERIVED)
                .line(
                    EmbedmentSheet.moment("M_u", "u_{f,1}", "u_{f,2}", a, b),
                    KNM_M,
                    "moment of water in front",
                    Reference.DERIVED)
                .line(
                    EmbedmentSheet.moment("M_p", "p_{p,1}", "p_{p,2}", a, b),
                    KNM_M,
                    "passive moment",
                    Reference.DERIVED)
                .sum("ΣM_b", "M_b", "moments behind")
                .sum("ΣM_u", "M_u", "moments of water in front")
                .sum("ΣM_p", "M_p", "passive moments"))
        .line("M_E = ΣM_b − ΣM_u", KNM_M, "moment to be balanced", Reference.DERIVED)
        .line("F_p = ΣM_p/M_E", ONE, "factor on passive pressure", RATIO)
        .require("F_p ≥ F_r", "passive pressure has the reserve required", RATIO);
  }

  @Override
  public String id() {
    return "passive-reserve";
  }

  @Override
  public String title() {
    return "Reserve of passive pressure";
  }

  @Override
  public Family family() {
    return Family.STABILITY;
  }

  @Override
  public List<CalcSheet> sheets() {
    return List.of(SUPPORTED, LOWEST, CANTILEVER);
  }

  @Override
  public List<CheckResult> run(Job job) {
    List<CheckResult> results = new ArrayList<>();
    for (WallRun run : job.submission().runs()) {
      RunDesign design = RunDesign.of(job, run);
      for (WallSolution solution : design.solutions()) {
        results.add(result(job, design, solution));
      }
    }
    return results;
  }

  private CheckResult result(Job job, RunDesign design, WallSolution solution) {
    DesignSituation s = solution.situation();
    Subject subject = s.subject();
    OptionalDouble toe = design.toe();
    if (solution.loading().isEmpty() || toe.isEmpty()) {
      return CheckResult.notChecked(
          this,
          subject,
          solution.reason().isEmpty()
              ? "another stage of this run has no equilibrium, so no toe is known"
              : solution.reason());
    }
    WallLoading loading = solution.loading().get();
    double level = toe.getAsDouble();
    if (level >= loading.excavationLevel()) {
      return CheckResult.notChecked(this, subject, "the toe lies above the design excavation");
    }
    if (level < loading.searchBottom()) {
      return CheckResult.notChecked(this, subject, "the toe lies below the known ground");
    }
    Given required =
        s.passiveDivisor() == s.factor("passive.safety")
            ? From.factor(job, "passive.safety", s.combination().id())
            : From.layout(s.passiveDivisor(), "margin stands on the embedment");
    Given centre =
        s.lowestSupport()
            .map(Support::level)
            .map(From::cell)
            .orElseGet(
                () ->
                    s.run()
                        .toe()
                        .map(From::cell)
                        .orElse(From.method(level, "toe sized by the program")));
    Calculation calculation =
        calculate(
            loading,
            level,
            centre,
            s.supports().isEmpty()
                ? Turning.ABOUT_TOE
                : s.support().isPresent() ? Turning.ABOUT_SUPPORT : Turning.BELOW_LOWEST,
            required);
    return calculation.value("M_E") > 0
        ? CheckResult.of(this, subject, calculation)
        : CheckResult.notChecked(
            this,
            subject,
            "the wall needs no passive pressure at this toe; a ratio has no meaning");
  }

  /**
   * Fills the sheet.
   *
   * @param loading pressures; their divisor on passive pressure is taken out
   * @param toe toe level, m
   * @param centre level about which moments are taken, m
   * @param turning how the wall turns about it
   * @param required factor required
   */
  public static Calculation calculate(
      WallLoading loading, double toe, Given centre, Turning turning, Given required) {
    WallLoading plain = loading.withPassiveDivisor(1);
    Binding binding =
        (switch (turning) {
              case ABOUT_TOE -> CANTILEVER;
              case ABOUT_SUPPORT -> SUPPORTED;
              case BELOW_LOWEST -> LOWEST;
            })
            .bind()
            .set("z_m", centre)
            .set("F_r", required);
    Source level = new Source.Layout("break of the diagrams");
    Source pressure = new Source.Line("pressure-active", "Active pressure on the wall", "p");
    Source passive = new Source.Line("pressure-passive", "Passive pressure on the wall", "p_E");
    PressureDiagram behind = plain.pressures().behind(Mobilisation.ACTIVE, toe);
    PressureDiagram front = plain.pressures().front(Mobilisation.PASSIVE, toe);
    for (double[] stretch : PressureRow.stretches(behind, front, centre.si())) {
      double upper = stretch[0];
      double lower = stretch[1];
      if (turning == Turning.BELOW_LOWEST && (upper + lower) / 2 > centre.si()) {
        continue;
      }
      binding.row(
          TABLE,
          Row.of(behind.holding(upper, lower).map(s -> s.top().layer()).orElse("water"))
              .set("z_1", upper, level)
              .set("z_2", lower, level)
              .set("p_{b,1}", KILO * PressureRow.at(behind, upper, lower, upper), pressure)
              .set("p_{b,2}", KILO * PressureRow.at(behind, upper, lower, lower), pressure)
              .set("u_{f,1}", KILO * water(front, upper, lower, upper), passive)
              .set("u_{f,2}", KILO * water(front, upper, lower, lower), passive)
              .set("p_{p,1}", KILO * earth(front, upper, lower, upper), passive)
              .set("p_{p,2}", KILO * earth(front, upper, lower, lower), passive));
    }
    return binding.calculate();
  }

  private static double water(PressureDiagram d, double upper, double lower, double level) {
    return part(d, upper, lower, level, true);
  }

  private static double earth(PressureDiagram d, double upper, double lower, double level) {
    return part(d, upper, lower, level, false);
  }

  private static double part(
      PressureDiagram d, double upper, double lower, double level, boolean water) {
    return d.holding(upper, lower)
        .map(
            (PressureSegment s) -> {
              double t = (s.top().level() - level) / (s.top().level() - s.bottom().level());
              return (1 - t) * part(s.top(), water) + t * part(s.bottom(), water);
            })
        .orElse(0.0);
  }

  private static double part(PressureNode n, boolean water) {
    return water ? n.waterFactor() * n.u() : n.earthFactor() * n.earth();
  }
}
