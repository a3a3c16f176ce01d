package pilefolio.checks.rig;

import static pilefolio.units.Units.KG_M;
import static pilefolio.units.Units.KN;
import static pilefolio.units.Units.M;
import static pilefolio.units.Units.MM;
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
import pilefolio.model.Technique;
import pilefolio.model.Tool;
import pilefolio.model.WallRun;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Reference;

/** Whether the rig can pull an auger that sticks at full depth. */
public final class AugerPull extends RunCheck {
  private static final CalcSheet SHEET =
      BoreGround.on(
              CalcSheet.named("Pull on an auger that sticks")
                  .given("D", MM, "outside diameter of the flights")
                  .given("d_0", MM, "outside diameter of the stem")
                  .given("l_d", M, "drilled length")
                  .given("m_s", KG_M, "mass of the auger string")
                  .given("η_s", ONE, "share of the shear to be overcome")
                  .given("P_r", KN, "rated pull of the rig")
                  .given("ρ", ONE, "share of a rated value that may be used"))
          .line("W_s = m_s·l_d·9.81[N/kg]", KN, "weight of the string", Reference.DERIVED)
          .line(
              "W_g = π/4·(D² − d_0²)·σ_b",
              KN,
              "weight of the ground on the flights",
              Reference.DERIVED)
          .line("F_s = π·D·F_τ·η_s", KN, "shear on the bore", Reference.PRACTICE)
          .line("P_a = W_s + W_g + F_s", KN, "pull to free the auger", Reference.DERIVED)
          .line("P_p = ρ·P_r", KN, "pull that may be used", Reference.PRACTICE)
          .require("P_a ≤ P_p", "a stuck auger can be pulled", Reference.PRACTICE)
          .note(
              "Suction at the tip is not included. If the rating is not enough: shorter piles, a"
                  + " casing, or freeing in stages.");

  /** The check. */
  public AugerPull() {
    super("auger-pull", "Pull with a stuck auger", Family.RIG, SHEET);
  }

  @Override
  protected List<CheckResult> check(Job job, WallRun run) {
    if (run.technique() != Technique.UNCASED_AUGER) {
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
                        .set("D", From.cell(tool.augerDiameter()))
                        .set("d_0", From.cell(tool.stemDiameter()))
                        .set(
                            "l_d",
                            From.line(Levels.CHECK, Levels.of(job, run, PileKind.SECONDARY), "l_d"))
                        .set("m_s", need(tool.stringMass(), "the mass of the auger string"))
                        .set("η_s", From.cell(tool.stuckShare()))
                        .set("P_r", need(rig.pull(), "the rated pull of " + rig.id()))
                        .set("ρ", From.cell(job.submission().methods().capacityReserve())),
                    job,
                    run,
                    BoreGround.whole())
                .calculate()));
  }
}
