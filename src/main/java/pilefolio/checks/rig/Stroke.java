package pilefolio.checks.rig;

import static pilefolio.units.Units.M;

import java.util.List;
import java.util.Optional;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck;
import pilefolio.checks.Subject;
import pilefolio.checks.geometry.Levels;
import pilefolio.model.PileKind;
import pilefolio.model.Rig;
import pilefolio.model.Technique;
import pilefolio.model.WallRun;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Given;
import pilefolio.trace.Reference;

/** Whether the mast is long enough to drill the deepest pile. */
public final class Stroke extends RunCheck {
  private static final CalcSheet SHEET =
      CalcSheet.named("Stroke of the mast")
          .given("l_d", M, "drilled length")
          .given("l_m", M, "travel of the head on the mast")
          .given("l_x", M, "length added by an extension of the string")
          .given("l_o", M, "length lost to cleaner, ejector and clearance")
          .line("l_r = l_m + l_x − l_o", M, "length that can be drilled", Reference.DERIVED)
          .require("l_d ≤ l_r", "the rig reaches the toe", Reference.DERIVED);

  /** The check. */
  public Stroke() {
    super("rig-stroke", "Stroke and drilled length", Family.RIG, SHEET);
  }

  /** Speaks for its family: what is not asked of walls without primaries is not passed over. */
  @Override
  protected Optional<String> leftOut(WallRun run) {
    return Optional.of(
        "rig, handling and forces of installation are checked for secant walls only in this version");
  }

  @Override
  protected List<CheckResult> check(Job job, WallRun run) {
    Rig rig = job.submission().rig(run);
    Given extension =
        run.technique() == Technique.CASED_AUGER
            ? From.layout(0, "the casing is not extended")
            : rig.extension().map(From::cell).orElse(From.layout(0, "no extension given"));
    return List.of(
        CheckResult.of(
            this,
            Subject.run(run.id()).piles("secondaries"),
            SHEET
                .bind()
                .set("l_d", From.line(Levels.CHECK, Levels.of(job, run, PileKind.SECONDARY), "l_d"))
                .set("l_m", need(rig.stroke(), "the stroke of " + rig.id()))
                .set("l_x", extension)
                .set("l_o", need(rig.headOffset(), "the head offset of " + rig.id()))
                .calculate()));
  }
}
