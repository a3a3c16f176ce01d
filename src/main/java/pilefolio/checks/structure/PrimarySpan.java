package pilefolio.checks.structure;

import java.util.Comparator;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.geometry.SetOut;
import pilefolio.checks.situation.DesignSituation;
import pilefolio.model.WallRun;
import pilefolio.trace.Binding;
import pilefolio.trace.Given;

/** Hands the geometry of a primary between its secondaries to a sheet. */
final class PrimarySpan {
  private static final double RISE = 0.25;

  /** Why a primary may not be covered. */
  static final String OPEN =
      "the joint is likely open at excavation level, or the mix is outside the range of the rules";

  private PrimarySpan() {}

  /** Binds everything that the sheets have in common. */
  static void bind(Binding binding, Job job, WallRun run, Effects effects) {
    binding
        .set("p", effects.pressure())
        .set("s", From.cell(run.line().spacing()))
        .set("D_p", From.cell(run.primary().diameter()))
        .set("D_s", From.cell(run.secondary().diameter()))
        .set("e_0", SetOut.position(job, run))
        .set("n", SetOut.verticality(job))
        .set("z", depth(job, run, effects.combination()))
        .set("k_f", From.layout(RISE, "a quarter of the joint"));
    ConcreteStrength.bind(binding, "f_m", job.submission().mix(run.primary()));
  }

  private static Given depth(Job job, WallRun run, String combination) {
    double excavation =
        DesignSituation.of(job.submission(), job.basis(), run).stream()
            .filter(s -> s.combination().id().equals(combination))
            .map(DesignSituation::designExcavation)
            .min(Comparator.naturalOrder())
            .orElseThrow();
    return From.layout(
        run.levels().platform().si() - excavation, "platform less design excavation level");
  }
}
