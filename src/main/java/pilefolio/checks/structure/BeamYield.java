package pilefolio.checks.structure;

import java.util.List;
import java.util.Optional;
import pilefolio.checks.CheckResult;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.Subject;
import pilefolio.standards.SteelGrade;
import pilefolio.trace.CalcSheet;

/** The yield strength that the user entered against the grade at the thickness of the flange. */
final class BeamYield extends BeamCheck {

  @Override
  public String id() {
    return "beam-yield-strength";
  }

  @Override
  public String title() {
    return "Yield strength of the beam";
  }

  @Override
  public List<CalcSheet> sheets() {
    return List.of(FitSheets.YIELD);
  }

  @Override
  List<CheckResult> examine(Job job, WallBeam beam) {
    Subject subject = Subject.run(beam.run().id());
    Optional<SteelGrade> grade = grade(job, beam.beam().grade());
    Optional<Double> limit = grade.flatMap(g -> g.yieldStrength(beam.section().flange()));
    if (limit.isEmpty()) {
      return List.of(
          CheckResult.notChecked(
              this,
              subject,
              "the grade "
                  + beam.beam().grade()
                  + " is not in the material tables for a flange of this thickness"));
    }
    return List.of(
        CheckResult.of(
            this,
            subject,
            FitSheets.YIELD
                .bind()
                .set("f_y", beam.yieldStrength())
                .set(
                    "f_{y,t}", From.table(limit.get(), grade.get().standard(), grade.get().grade()))
                .calculate()));
  }

  /** On European rules the table of the design code goes before that of the product standard. */
  private static Optional<SteelGrade> grade(Job job, String name) {
    return (aisc(job) ? Optional.<SteelGrade>empty() : SteelGrade.find(name + " EN 1993"))
        .or(() -> SteelGrade.find(name));
  }
}
