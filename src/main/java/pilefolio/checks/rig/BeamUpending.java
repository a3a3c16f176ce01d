package pilefolio.checks.rig;

import static pilefolio.units.Units.CM3;
import static pilefolio.units.Units.KG_M;
import static pilefolio.units.Units.KNM;
import static pilefolio.units.Units.KN_M;
import static pilefolio.units.Units.M;
import static pilefolio.units.Units.N_MM2;
import static pilefolio.units.Units.ONE;

import java.util.ArrayList;
import java.util.List;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck;
import pilefolio.checks.Subject;
import pilefolio.checks.geometry.Levels;
import pilefolio.model.WallRun;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Reference;

/** Bending of a beam while it is turned from lying to hanging. */
public final class BeamUpending extends RunCheck {
  private static final CalcSheet SHEET =
      CalcSheet.named("Turning a beam upright")
          .given("m_b", KG_M, "mass of the section")
          .given("l_b", M, "length of the beam")
          .given("φ_d", ONE, "factor for moving loads")
          .given("W_y", CM3, "elastic section modulus about the weak axis")
          .given("f_y", N_MM2, "yield strength")
          .line("w = m_b·9.81[N/kg]", KN_M, "weight for each length", Reference.DERIVED)
          .line(
              "M_u = φ_d·w·l_b²/8",
              KNM,
              "moment, picked up at one end with the other on the ground",
              Reference.DERIVED)
          .line("σ_u = M_u/W_y", N_MM2, "bending stress, lying on its flanges", Reference.DERIVED)
          .line("σ_p = f_y/1.5", N_MM2, "stress permitted while handling", Reference.PRACTICE)
          .require("σ_u ≤ σ_p", "the beam is not bent while it is raised", Reference.PRACTICE)
          .note("The eye or hole by which it hangs, and a splice, are checked by the lifter.");

  /** The check. */
  public BeamUpending() {
    super("beam-upending", "Turning the beams upright", Family.RIG, SHEET);
  }

  @Override
  protected List<CheckResult> check(Job job, WallRun run) {
    List<CheckResult> results = new ArrayList<>();
    for (HungBeam hung : HungBeam.of(job, run)) {
      results.add(
          CheckResult.of(
              this,
              Subject.run(run.id()).piles("beams of the " + Levels.plural(hung.kind())),
              SHEET
                  .bind()
                  .set("m_b", hung.property(hung.section().mass()))
                  .set("l_b", hung.length())
                  .set("φ_d", From.layout(1.25, "practice, 1.1 to 1.25"))
                  .set("W_y", hung.property(hung.section().weakElasticModulus()))
                  .set("f_y", From.cell(hung.beam().yieldStrength()))
                  .calculate()));
    }
    return results;
  }
}
