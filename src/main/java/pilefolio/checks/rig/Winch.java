package pilefolio.checks.rig;

import static pilefolio.units.Units.KG_M;
import static pilefolio.units.Units.KN;
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
import pilefolio.model.Rig;
import pilefolio.model.WallRun;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Calculation;
import pilefolio.trace.Reference;

/** Line pull to hang a beam, and height of the hook. */
public final class Winch extends RunCheck {
  private static final CalcSheet SHEET =
      CalcSheet.named("Hanging a beam from the winch")
          .given("m_b", KG_M, "mass of the section")
          .given("l_b", M, "length of the beam")
          .given("W_r", KN, "weight of the rigging")
          .given("φ_d", ONE, "factor for moving loads")
          .given("n_p", ONE, "parts of line")
          .given("F_r", KN, "rated pull of one line")
          .given("ρ", ONE, "share of a rated value that may be used")
          .line("W_b = m_b·l_b·9.81[N/kg]", KN, "weight of the beam", Reference.DERIVED)
          .line("F_h = (W_b + W_r)·φ_d", KN, "load on the hook", Reference.PRACTICE)
          .line("F_l = F_h/n_p", KN, "pull of one line", Reference.DERIVED)
          .line("F_p = ρ·F_r", KN, "pull that may be used", Reference.PRACTICE)
          .require("F_l ≤ F_p", "the winch hangs the beam with reserve", Reference.PRACTICE);

  private static final CalcSheet HEIGHT =
      CalcSheet.named("Height of the hook")
          .given("l_b", M, "length of the beam")
          .given("l_s", M, "length of sling and shackle")
          .given("h_g", M, "height of the guide frame above the platform")
          .given("h_k", M, "greatest height of the hook above the platform")
          .line("h_n = l_b + l_s + h_g", M, "height needed", Reference.DERIVED)
          .require("h_n ≤ h_k", "the beam clears the guide frame", Reference.DERIVED);

  /** The check. */
  public Winch() {
    super("beam-winch", "Winch and hook for the beams", Family.RIG, SHEET, HEIGHT);
  }

  @Override
  protected List<CheckResult> check(Job job, WallRun run) {
    Rig rig = job.submission().rig(run);
    List<CheckResult> results = new ArrayList<>();
    for (HungBeam hung : HungBeam.of(job, run)) {
      Subject subject = Subject.run(run.id()).piles("beams of the " + Levels.plural(hung.kind()));
      List<Calculation> sheets = new ArrayList<>();
      sheets.add(
          SHEET
              .bind()
              .set("m_b", hung.property(hung.section().mass()))
              .set("l_b", hung.length())
              .set("W_r", From.layout(1500, "practice"))
              .set("φ_d", From.layout(1.25, "practice, 1.1 to 1.25"))
              .set("n_p", rig.winchParts().map(From::cell).orElse(From.layout(1, "one part")))
              .set("F_r", need(rig.winchLinePull(), "the rated line pull of " + rig.id()))
              .set("ρ", From.cell(job.submission().methods().capacityReserve()))
              .calculate());
      if (rig.hookHeight().isPresent()) {
        sheets.add(
            HEIGHT
                .bind()
                .set("l_b", hung.length())
                .set("l_s", From.layout(2, "practice"))
                .set("h_g", From.layout(1, "practice"))
                .set("h_k", From.cell(rig.hookHeight().get()))
                .calculate());
      } else {
        results.add(
            CheckResult.notChecked(
                this, subject, "The workbook does not give the hook height of " + rig.id() + "."));
      }
      results.add(CheckResult.of(this, subject, sheets));
    }
    return results;
  }
}
