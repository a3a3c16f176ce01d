package pilefolio.checks.structure;

import java.util.List;
import pilefolio.checks.CheckResult;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.Subject;
import pilefolio.model.RunLevels;
import pilefolio.model.WallRun;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Calculation;

/** The top of the beam against cut-off and platform. */
final class BeamTop extends BeamCheck {

  @Override
  public String id() {
    return "beam-top-level";
  }

  @Override
  public String title() {
    return "Top of the beam";
  }

  @Override
  public List<CalcSheet> sheets() {
    return List.of(FitSheets.BELOW_CUT_OFF, FitSheets.ABOVE_CUT_OFF);
  }

  @Override
  boolean asked(WallRun run) {
    return !run.type().kingOrSoldierBeams();
  }

  @Override
  List<CheckResult> examine(Job job, WallBeam beam) {
    RunLevels levels = beam.run().levels();
    String combination = job.combinations().get(0).id();
    Calculation calculation =
        beam.freeLength(job.submission()) > 0
            ? FitSheets.ABOVE_CUT_OFF
                .bind()
                .set("z_p", From.cell(levels.platform()))
                .set("z_t", From.cell(beam.placing().top()))
                .calculate()
            : FitSheets.BELOW_CUT_OFF
                .bind()
                .set("z_c", From.cell(levels.cutOff()))
                .set("z_t", From.cell(beam.placing().top()))
                .set("c_t", From.factor(job, "beam.trim", combination))
                .calculate();
    return List.of(CheckResult.of(this, Subject.run(beam.run().id()), calculation));
  }
}
