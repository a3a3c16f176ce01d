package pilefolio.checks.structure;

import java.util.List;
import pilefolio.checks.CheckResult;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.Subject;
import pilefolio.model.WallRun;
import pilefolio.trace.CalcSheet;

/** Concrete between the corners of the beam and the wall of the bore. */
final class BeamCover extends BeamCheck {

  @Override
  public String id() {
    return "beam-cover";
  }

  @Override
  public String title() {
    return "Cover of the beam in the bore";
  }

  @Override
  public List<CalcSheet> sheets() {
    return List.of(FitSheets.COVER);
  }

  /** Lean mix round a soldier beam is not counted. */
  @Override
  boolean asked(WallRun run) {
    return !run.type().kingOrSoldierBeams() || run.beams().structuralToe();
  }

  @Override
  List<CheckResult> examine(Job job, WallBeam beam) {
    String combination = job.combinations().get(0).id();
    return List.of(
        CheckResult.of(
            this,
            Subject.run(beam.run().id()),
            FitSheets.COVER
                .bind()
                .set("D_s", From.cell(beam.run().bearing().orElseThrow().diameter()))
                .set("h", beam.property(beam.section().depth()))
                .set("b", beam.property(beam.section().width()))
                .set("e_b", From.factor(job, "beam.placing", combination))
                .set("c_min", From.cell(beam.placing().minimumCover()))
                .calculate()));
  }
}
