package pilefolio.checks.stability;

import static pilefolio.units.Units.DEG;
import static pilefolio.units.Units.M;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pilefolio.analysis.earth.OutsideRange;
import pilefolio.analysis.seepage.FlowNet;
import pilefolio.analysis.stability.StepSeepage;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck;
import pilefolio.checks.situation.DesignSituation;
import pilefolio.checks.situation.GroundWater;
import pilefolio.model.Value;
import pilefolio.model.WallRun;
import pilefolio.trace.Binding;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Calculation;
import pilefolio.trace.Given;
import pilefolio.trace.Reference;

/** What the checks of water rising in front of the toe share. */
abstract class SeepageCheck extends RunCheck {
  /** Unit weight of water, N/m³. */
  static final double WATER = 9810;

  // In a narrower excavation water from the other wall crowds in; beyond, by less than a tenth.
  private static final double WIDE = 8;

  static final Reference FLOW = Reference.DERIVED;

  SeepageCheck(String id, String title, CalcSheet... sheets) {
    super(id, title, Family.STABILITY, sheets);
  }

  /** The flow round the toe: found by one angle, verified by the depth behind. */
  static CalcSheet flow(String title) {
    return CalcSheet.named(title)
        .given("h", M, "difference of water levels")
        .given("D", M, "depth of the toe below the surface where water leaves")
        .given("D_b", M, "depth of the toe below the surface where water enters")
        .found(
            "θ",
            DEG,
            "angle of the toe in the mapped section",
            "flow round a wall in deep uniform ground, exact")
        .line("A = D/(sin(θ) − θ·cos(θ))", M, "scale of the mapping", FLOW)
        .line("D_1 = A·(sin(θ) + (π − θ)·cos(θ))", M, "depth behind that belongs to it", FLOW)
        .condition("abs(D_1 − D_b) ≤ 0.001·D_b", "the angle fits the depth behind", FLOW);
  }

  static Binding bind(CalcSheet sheet, ToeSeepage seepage, StepSeepage solved) {
    return sheet
        .bind()
        .set("h", From.layout(seepage.head(), "water levels of the stage"))
        .set("D", From.layout(seepage.front(), "excavation or water in front to the toe"))
        .set("D_b", From.layout(seepage.behind(), "water behind to the toe"))
        .set("θ", From.method(solved.tipAngleRad(), "root for the ratio of the depths"));
  }

  @Override
  protected List<CheckResult> check(Job job, WallRun run) {
    List<CheckResult> results = new ArrayList<>();
    for (DesignSituation s : LowestStages.of(job, run)) {
      Optional<ToeSeepage> seepage = ToeSeepage.of(job, s);
      if (seepage.isPresent()) {
        results.add(result(job, s, seepage.get()));
      }
    }
    return results;
  }

  private CheckResult result(Job job, DesignSituation s, ToeSeepage seepage) {
    Given weight = From.layout(seepage.weight() * 1000, "mean of the layers between exit and toe");
    Given least = From.layout(seepage.leastWeight() * 1000, "lightest layer above the toe");
    try {
      return CheckResult.of(
          this, s.subject(), calculate(job, s, seepage, net(s, seepage), weight, least));
    } catch (OutsideRange e) {
      return CheckResult.notChecked(this, s.subject(), e.getMessage());
    }
  }

  /** A flow net where the user chose one, or where the excavation is narrow. */
  private static Optional<FlowNet> net(DesignSituation s, ToeSeepage seepage) {
    Optional<FlowNet> layered = GroundWater.net(s);
    return layered.isPresent()
        ? layered
        : s.run()
            .analysis()
            .excavationWidth()
            .map(Value::si)
            .filter(width -> width < WIDE * seepage.front())
            .map(seepage::between);
  }

  /** A sheet that rests on a flow net. */
  static CalcSheet byNet(String title) {
    return CalcSheet.named(title)
        .given("h", M, "difference of water levels")
        .given("D", M, "depth of the toe below the surface where water leaves");
  }

  static Binding bindNet(CalcSheet sheet, ToeSeepage seepage) {
    return sheet
        .bind()
        .set("h", From.layout(seepage.head(), "water levels of the stage"))
        .set("D", From.layout(seepage.front(), "excavation or water in front to the toe"));
  }

  abstract Calculation calculate(
      Job job,
      DesignSituation s,
      ToeSeepage seepage,
      Optional<FlowNet> net,
      Given weight,
      Given leastWeight);
}
