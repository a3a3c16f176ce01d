package pilefolio.checks.structure;

import java.util.List;
import pilefolio.checks.CheckResult;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.model.Lagging;
import pilefolio.model.WallType;
import pilefolio.standards.DesignBasis;
import pilefolio.trace.Binding;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Calculation;

/** Bending and shear of timber boards. */
final class LaggingBending extends LaggingCheck {
  /** Share of the width that cracks leave for shear, solid timber. */
  private static final double CRACKED = 0.67;

  LaggingBending() {
    super(WallType.SOLDIER_TIMBER);
  }

  @Override
  public String id() {
    return "lagging-bending";
  }

  @Override
  public String title() {
    return "Bending and shear of timber lagging";
  }

  @Override
  public List<CalcSheet> sheets() {
    return List.of(LaggingSheets.ALLOWABLE, LaggingSheets.EN);
  }

  @Override
  List<CheckResult> examine(Job job, WallBeam beam, Lagging lagging) {
    if (lagging.bendingStrength().isEmpty() || lagging.shearStrength().isEmpty()) {
      return List.of(
          notChecked(
              beam.run(),
              "the workbook does not give the bending and the shear strength of timber"));
    }
    if (job.basis().format() == DesignBasis.Format.LOAD_AND_RESISTANCE) {
      return List.of(
          notChecked(
              beam.run(), "timber with load and resistance factors is not covered; see the table"));
    }
    return eachCombination(
        job,
        beam.run(),
        Effects::worstPressure,
        effects -> calculation(job, beam, lagging, effects),
        "the boards have no thickness left");
  }

  private static Calculation calculation(Job job, WallBeam beam, Lagging lagging, Effects effects) {
    boolean allowable = job.basis().format() == DesignBasis.Format.ALLOWABLE_STRESS;
    Binding binding =
        strip((allowable ? LaggingSheets.ALLOWABLE : LaggingSheets.EN).bind(), job, beam, effects)
            .set("t", From.cell(lagging.thickness()))
            .set("Δ_t", From.cell(lagging.undersize()))
            .set("k_t", From.cell(lagging.modification()));
    if (allowable) {
      return binding
          .set("F_b", From.cell(lagging.bendingStrength().orElseThrow()))
          .set("F_v", From.cell(lagging.shearStrength().orElseThrow()))
          .calculate();
    }
    return binding
        .set("f_{m,k}", From.cell(lagging.bendingStrength().orElseThrow()))
        .set("f_{v,k}", From.cell(lagging.shearStrength().orElseThrow()))
        .set("γ_{M,t}", From.factor(job, "timber.material", effects.combination()))
        .set("k_cr", From.layout(CRACKED, "solid timber"))
        .calculate();
  }
}
