package pilefolio.checks.support;

import java.util.List;
import pilefolio.checks.CheckResult;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.model.RakerFooting;
import pilefolio.model.Support;
import pilefolio.trace.Calculation;

/** Bearing and sliding of the footings of rakers. */
final class RakerFootingCheck extends SupportCheck {
  private static final double CONCRETE = 24e3;

  RakerFootingCheck() {
    super("raker-footing", "Footing of a raker", RakerSheets.FOOTING);
  }

  @Override
  List<CheckResult> examine(Job job, Support support) {
    return members(job)
        .footing(support)
        .map(
            footing ->
                eachCombination(
                    job,
                    support,
                    demand -> List.of(calculate(support, footing, demand)),
                    "the raker stands beside the base"))
        .orElse(List.of());
  }

  private static Calculation calculate(Support support, RakerFooting footing, Demand demand) {
    return RakerSheets.FOOTING
        .bind()
        .set("T", demand.force())
        .set("s", From.cell(support.spacing()))
        .set("i", From.cell(support.inclination()))
        .set("B", From.cell(footing.length()))
        .set("L", From.cell(footing.width()))
        .set("t", From.cell(footing.thickness()))
        .set("γ_c", From.layout(CONCRETE, "plain concrete"))
        .set("ω", From.cell(footing.tilt()))
        .set("e", From.cell(footing.eccentricity()))
        .set("q_R", From.cell(footing.bearing()))
        .set("μ", From.cell(footing.friction()))
        .set("P_R", From.cell(footing.resistance()))
        .calculate();
  }
}
