package pilefolio.checks.rig;

import static pilefolio.units.Units.M;
import static pilefolio.units.Units.ONE;

import java.util.List;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck;
import pilefolio.checks.Subject;
import pilefolio.model.Rig;
import pilefolio.model.WallRun;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Reference;

/** Whether the rig reaches the pile axis from where it is set up. */
public final class Reach extends RunCheck {
  private static final CalcSheet SHEET =
      CalcSheet.named("Reach of the rig")
          .given("a_n", M, "distance from the centre of slewing to the pile axis as set up")
          .given("a_r", M, "rated reach")
          .given("ρ", ONE, "share of a rated value that may be used")
          .line("a_p = ρ·a_r", M, "reach that may be used", Reference.PRACTICE)
          .require("a_n ≤ a_p", "the rig reaches the pile axis with reserve", Reference.PRACTICE)
          .note(
              "The proof that the rig stands safely on its platform is to use the same distance.");

  /** The check. */
  public Reach() {
    super("rig-reach", "Reach of the rig", Family.RIG, SHEET);
  }

  @Override
  protected List<CheckResult> check(Job job, WallRun run) {
    Rig rig = job.submission().rig(run);
    return List.of(
        CheckResult.of(
            this,
            Subject.run(run.id()).piles("all piles"),
            SHEET
                .bind()
                .set("a_n", need(rig.setUpDistance(), "the set-up distance of " + rig.id()))
                .set("a_r", need(rig.reach(), "the rated reach of " + rig.id()))
                .set("ρ", From.cell(job.submission().methods().capacityReserve()))
                .calculate()));
  }
}
