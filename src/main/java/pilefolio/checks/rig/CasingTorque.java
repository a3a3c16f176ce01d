package pilefolio.checks.rig;

import static pilefolio.units.Units.KNM;
import static pilefolio.units.Units.MM;
import static pilefolio.units.Units.ONE;

import java.util.List;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck;
import pilefolio.checks.Subject;
import pilefolio.model.Rig;
import pilefolio.model.Technique;
import pilefolio.model.Tool;
import pilefolio.model.WallRun;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Reference;

/** Torque to turn the casing at full depth, against the casing head. */
public final class CasingTorque extends RunCheck {
  private static final CalcSheet SHEET =
      BoreGround.on(
              CalcSheet.named("Torque of the casing")
                  .given("D_o", MM, "outside diameter of the casing")
                  .given("T_r", KNM, "rated torque of the casing head")
                  .given("ρ", ONE, "share of a rated value that may be used"))
          .line("T_c = π·D_o²/2·F_τ", KNM, "torque on the casing", Reference.DERIVED)
          .line("T_p = ρ·T_r", KNM, "torque that may be used", Reference.PRACTICE)
          .require("T_c ≤ T_p", "the head turns the casing with reserve", Reference.PRACTICE)
          .note(
              "Shear acts on the whole casing. Cutting of the primaries at the shoe comes on top.");

  /** The check. */
  public CasingTorque() {
    super("casing-torque", "Torque of the casing", Family.RIG, SHEET);
  }

  @Override
  protected List<CheckResult> check(Job job, WallRun run) {
    if (run.technique() != Technique.CASED_AUGER) {
      return List.of();
    }
    Rig rig = job.submission().rig(run);
    Tool tool = job.submission().tool(run);
    return List.of(
        CheckResult.of(
            this,
            Subject.run(run.id()).piles("secondaries"),
            BoreGround.layers(
                    SHEET
                        .bind()
                        .set("D_o", need(tool.casingOuter(), "the outside diameter of the casing"))
                        .set(
                            "T_r",
                            need(
                                rig.casingTorque(),
                                "the rated torque of the casing head of " + rig.id()))
                        .set("ρ", From.cell(job.submission().methods().capacityReserve())),
                    job,
                    run,
                    BoreGround.remoulded())
                .calculate()));
  }
}
