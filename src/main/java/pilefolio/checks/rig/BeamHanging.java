package pilefolio.checks.rig;

import static pilefolio.units.Units.KG_M;
import static pilefolio.units.Units.KN;
import static pilefolio.units.Units.KPA;
import static pilefolio.units.Units.M;
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

/** Pressure under the bearers on which a beam hangs until the concrete has set. */
public final class BeamHanging extends RunCheck {
  private static final CalcSheet SHEET =
      CalcSheet.named("Beam hung on the guide wall until the concrete has set")
          .given("m_b", KG_M, "mass of the section")
          .given("l_b", M, "length of the beam")
          .given("φ_d", ONE, "factor for setting down")
          .given("n_b", ONE, "bearers")
          .given("b_b", M, "width of the bearing of one")
          .given("l_a", M, "length of the bearing of one")
          .line("W_b = m_b·l_b·9.81[N/kg]", KN, "weight of the beam", Reference.DERIVED)
          .line("A_b = n_b·b_b·l_a", pilefolio.units.Units.M2, "bearing area", Reference.DERIVED)
          .line("q_b = φ_d·W_b/A_b", KPA, "pressure the ground must carry", Reference.DERIVED)
          .note(
              "The guide wall, or the platform under the bearers, is to be proved for this pressure"
                  + " together with the platform for the rig.");

  /** The check. */
  public BeamHanging() {
    super("beam-hanging", "Beams hung until the concrete has set", Family.RIG, SHEET);
  }

  @Override
  public boolean derivation() {
    return true;
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
                  .set("φ_d", From.layout(1.2, "practice"))
                  .set("n_b", From.layout(2, "practice"))
                  .set("b_b", From.layout(0.4, "practice"))
                  .set("l_a", From.layout(0.5, "practice"))
                  .calculate()));
    }
    return results;
  }
}
