package pilefolio.checks.rig;

import static pilefolio.units.Units.DEG;
import static pilefolio.units.Units.M;
import static pilefolio.units.Units.ONE;

import java.util.List;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck;
import pilefolio.checks.Subject;
import pilefolio.checks.geometry.Levels;
import pilefolio.model.PileKind;
import pilefolio.model.Rig;
import pilefolio.model.Value;
import pilefolio.model.WallRun;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Reference;

/** Whether the mast can be laid over as far as a raking wall needs. */
public final class Batter extends RunCheck {
  private static final CalcSheet SHEET =
      CalcSheet.named("Batter of the mast")
          .given("n_b", ONE, "batter, 1 horizontal in n vertical")
          .given("θ_r", DEG, "greatest inclination of the mast that way")
          .given("l_d", M, "vertical depth of the bore")
          .line("θ = atan(1/n_b)", DEG, "inclination of the pile", Reference.DERIVED)
          .line("Δ_x = l_d/n_b", M, "horizontal distance of toe and head", Reference.DERIVED)
          .require("θ ≤ θ_r", "the mast can be laid over", Reference.DERIVED)
          .require(
              "n_b ≥ 4",
              "the batter lies in the scope of bored piles without permanent casing",
              Reference.read("EN 1536:2010+A1:2015", "scope"))
          .note(
              "Raking guides are needed beyond 1 in 10; stability of the rig and stroke are looked"
                  + " at again.");

  /** The check. */
  public Batter() {
    super("rig-batter", "Batter", Family.RIG, SHEET);
  }

  @Override
  protected List<CheckResult> check(Job job, WallRun run) {
    if (run.batter().isEmpty()) {
      return List.of();
    }
    Rig rig = job.submission().rig(run);
    Value forward = needed(rig.batterForward(), "the forward batter of " + rig.id());
    Value backward = needed(rig.batterBackward(), "the backward batter of " + rig.id());
    return List.of(
        CheckResult.of(
            this,
            Subject.run(run.id()).piles("all piles"),
            SHEET
                .bind()
                .set("n_b", From.cell(run.batter().get()))
                .set("θ_r", From.cell(forward.si() <= backward.si() ? forward : backward))
                .set("l_d", From.line(Levels.CHECK, Levels.of(job, run, PileKind.SECONDARY), "l_d"))
                .calculate()));
  }
}
