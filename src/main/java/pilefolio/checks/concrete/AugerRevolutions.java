package pilefolio.checks.concrete;

import static pilefolio.units.Units.MM;
import static pilefolio.units.Units.M_MIN;
import static pilefolio.units.Units.ONE;
import static pilefolio.units.Units.REV_MIN;

import java.util.List;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck;
import pilefolio.checks.Subject;
import pilefolio.checks.geometry.SetOut;
import pilefolio.model.GroundProfile;
import pilefolio.model.PileKind;
import pilefolio.model.Rig;
import pilefolio.model.SoilKind;
import pilefolio.model.Technique;
import pilefolio.model.Tool;
import pilefolio.model.WallRun;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Given;
import pilefolio.trace.Reference;

/** Whether an auger without casing advances fast enough not to draw ground from around the bore. */
public final class AugerRevolutions extends RunCheck {
  private static final Reference RATE = Reference.read("FHWA-HIF-07-03 (GEC 8)", "chapter 7");

  private static final CalcSheet SHEET =
      CalcSheet.named("Revolutions of the auger for each pitch of advance")
          .given("n_r", REV_MIN, "speed of the auger while drilling")
          .given("p", MM, "pitch of the flights")
          .given("v", M_MIN, "advance of the auger")
          .given("D", MM, "outside diameter of the flights")
          .given("d_0", MM, "outside diameter of the stem")
          .given("N_lim", ONE, "most revolutions for one pitch in the ground drilled")
          .line("N_p = n_r·p/v", ONE, "revolutions for one pitch", Reference.DERIVED)
          .line(
              "N_i = 1/(1 − d_0²/D²)",
              ONE,
              "most revolutions if the ground is not to loosen at all, full flights",
              Reference.DERIVED)
          .line("v_m = n_r·p/N_lim", M_MIN, "slowest advance at this speed", Reference.DERIVED)
          .require("N_p ≤ N_lim", "the auger does not draw ground from around the bore", RATE)
          .note(
              "N_i presumes that the flights carry everything and is an ideal; it is shown for"
                  + " comparison and is no requirement.");

  /** The check. */
  public AugerRevolutions() {
    super("auger-revolutions", "Revolutions per pitch", Family.CONCRETE, SHEET);
  }

  @Override
  protected List<CheckResult> check(Job job, WallRun run) {
    if (run.technique() == Technique.CASED_AUGER) {
      return List.of();
    }
    Rig rig = job.submission().rig(run);
    Tool tool = job.submission().tool(run);
    return List.of(
        CheckResult.of(
            this,
            Subject.run(run.id()).piles("all piles"),
            SHEET
                .bind()
                .set("n_r", need(rig.rotation(), "the speed of the auger"))
                .set("p", From.cell(tool.pitch()))
                .set("v", need(rig.penetration(), "the advance of the auger"))
                .set("D", From.cell(tool.augerDiameter()))
                .set("d_0", From.cell(tool.stemDiameter()))
                .set("N_lim", limit(job, run))
                .calculate()));
  }

  /** The stricter limit as soon as one layer on the way has no clay to hold it. */
  private static Given limit(Job job, WallRun run) {
    GroundProfile profile = job.submission().profile(run);
    double toe = SetOut.toe(job, run, PileKind.SECONDARY).si();
    boolean clay =
        profile.layers().stream()
            .filter(layer -> layer.top().si() > toe)
            .allMatch(l -> l.kind() == SoilKind.CLAY || l.kind() == SoilKind.ROCK);
    return clay
        ? From.layout(3, "clay over the whole length")
        : From.layout(2, "cohesionless layers on the way");
  }
}
