package pilefolio.checks.structure;

import java.util.List;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Job;
import pilefolio.model.WallRun;
import pilefolio.trace.Binding;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Calculation;

/** Whether the concrete of the pile holds the compression flange of the beam. */
final class BeamRestraint extends BeamCheck {

  @Override
  public String id() {
    return "beam-lateral-restraint";
  }

  @Override
  public String title() {
    return "Lateral restraint of the beam by the concrete";
  }

  @Override
  public List<CalcSheet> sheets() {
    return List.of(FitSheets.RESTRAINT);
  }

  /** Lean mix round a soldier beam is not counted. */
  @Override
  boolean asked(WallRun run) {
    return !run.type().kingOrSoldierBeams() || run.beams().structuralToe();
  }

  @Override
  List<CheckResult> examine(Job job, WallBeam beam) {
    if (!beam.strong()) {
      return List.of();
    }
    return eachCombination(
        job,
        beam.run(),
        Effects::worstMoment,
        effects -> calculation(job, beam, effects),
        "the force in the flange has no finite value");
  }

  private static Calculation calculation(Job job, WallBeam beam, Effects effects) {
    Binding binding =
        FitSheets.RESTRAINT
            .bind()
            .set("M", effects.moment())
            .set("s_b", beam.spacing())
            .set("h", beam.property(beam.section().depth()))
            .set("t_f", beam.property(beam.section().flange()));
    ConcreteStrength.bind(binding, "f_k", job.submission().mix(beam.run().bearing().orElseThrow()));
    return binding.calculate();
  }
}
