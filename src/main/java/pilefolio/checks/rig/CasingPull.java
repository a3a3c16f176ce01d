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

/** Whether the rig can pull a casing that has been left standing. */
public final class CasingPull extends RunCheck {
  private static final CalcSheet SHEET =
      BoreGround.on(
              CalcSheet.named("Pull on a casing that sticks")
                  .given("D_o", MM, "outside diameter of the casing")
                  .given("l_d", M, "length of casing in the ground")
                  .given("m_c", KG_M, "mass of the casing")
                  .given("η_s", ONE, "share of the shear to be overcome")
                  .given("P_r", KN, "rated pull of the rig")
                  .given("ρ", ONE, "share of a rated value that may be used"))
          .line("W_c = m_c·l_d·9.81[N/kg]", KN, "weight of the casing", Reference.DERIVED)
          .line("F_c = π·D_o·F_τ·η_s", KN, "shear on the casing", Reference.PRACTICE)
          .line("P_c = W_c + F_c", KN, "pull to free the casing", Reference.DERIVED)
          .line("P_p = ρ·P_r", KN, "pull that may be used", Reference.PRACTICE)
          .require("P_c ≤ P_p", "a stuck casing can be pulled", Reference.PRACTICE)
          .note(
              "The casing is turned while it is pulled, which takes most of the shear off the pull;"
                  + " this is the pull without turning.");

  /** The check. */
  public CasingPull() {
    super("casing-pull", "Pull with a stuck casing", Family.RIG, SHEET);
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
                            "l_d",
                            From.line(Levels.CHECK, Levels.of(job, run, PileKind.SECONDARY), "l_d"))
                        .set("m_c", need(tool.casingMass(), "the mass of the casing"))
                        .set("η_s", From.cell(tool.stuckShare()))
                        .set("P_r", need(rig.pull(), "the rated pull of " + rig.id()))
                        .set("ρ", From.cell(job.submission().methods().capacityReserve())),
                    job,
                    run,
                    BoreGround.whole())
                .calculate()));
  }
}
