package pilefolio.checks.rig;

import static pilefolio.units.Units.KN;
import static pilefolio.units.Units.ONE;

import java.util.List;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck;
import pilefolio.checks.Subject;
import pilefolio.model.GroundProfile;
import pilefolio.model.PileKind;
import pilefolio.model.Rig;
import pilefolio.model.SoilKind;
import pilefolio.model.WallRun;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Given;
import pilefolio.trace.Reference;

/** Downward force to keep an auger advancing, against the crowd of the rig. */
public final class Crowd extends RunCheck {
  private static final CalcSheet SHEET =
      CalcSheet.named("Crowd")
          .given("F_n", KN, "downward force the ground may call for")
          .given("F_r", KN, "rated crowd of the rig")
          .given("ρ", ONE, "share of a rated value that may be used")
          .line("F_p = ρ·F_r", KN, "crowd that may be used", Reference.PRACTICE)
          .require("F_n ≤ F_p", "the auger is kept advancing", Reference.PRACTICE)
          .note(
              "Screw-in augers advance mostly by their pitch; sets hung from a crane have only 13 kN"
                  + " to 45 kN from their own weight.");

  /** The check. */
  public Crowd() {
    super("crowd", "Crowd", Family.RIG, SHEET);
  }

  @Override
  protected List<CheckResult> check(Job job, WallRun run) {
    Rig rig = job.submission().rig(run);
    return List.of(
        CheckResult.of(
            this,
            Subject.run(run.id()).piles("secondaries"),
            SHEET
                .bind()
                .set("F_n", wanted(job, run))
                .set("F_r", need(rig.crowd(), "the rated crowd of " + rig.id()))
                .set("ρ", From.cell(job.submission().methods().capacityReserve()))
                .calculate()));
  }

  private static Given wanted(Job job, WallRun run) {
    GroundProfile profile = job.submission().profile(run);
    double toe = pilefolio.checks.geometry.SetOut.toe(job, run, PileKind.SECONDARY).si();
    boolean rock =
        profile.layers().stream().anyMatch(l -> l.kind() == SoilKind.ROCK && l.top().si() > toe);
    return rock
        ? From.layout(100e3, "practice in rock, lower end")
        : From.layout(50e3, "practice in soil, upper end");
  }
}
