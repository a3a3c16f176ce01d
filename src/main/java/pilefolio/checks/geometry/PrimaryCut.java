package pilefolio.checks.geometry;

import static pilefolio.units.Units.CM2;
import static pilefolio.units.Units.DEG;
import static pilefolio.units.Units.MM;
import static pilefolio.units.Units.PERCENT;

import java.util.List;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck;
import pilefolio.checks.Subject;
import pilefolio.model.WallRun;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Reference;

/** What the secondaries leave of a primary, and the average thickness of the wall. */
public final class PrimaryCut extends RunCheck {
  private static final CalcSheet SHEET =
      CalcSheet.named("Primary after both cuts, and average thickness of the wall")
          .given("D_p", MM, "diameter of the primaries")
          .given("D_s", MM, "diameter of the secondaries")
          .given("s", MM, "spacing of a primary and the next secondary, centre to centre")
          .line("R = max(D_p, D_s)/2", MM, "larger radius", Reference.DERIVED)
          .line("r = min(D_p, D_s)/2", MM, "smaller radius", Reference.DERIVED)
          .line(
              "ω_r = acos((s² + r² − R²)/(2·s·r))",
              DEG,
              "half angle of the common chord seen from the smaller pile",
              Reference.DERIVED)
          .line(
              "ω_R = acos((s² + R² − r²)/(2·s·R))",
              DEG,
              "half angle of the common chord seen from the larger pile",
              Reference.DERIVED)
          .line("a = R·sin(ω_R)", MM, "half of the common chord", Reference.DERIVED)
          .line(
              "A_c = r²·ω_r + R²·ω_R − s·a",
              CM2,
              "area one secondary cuts from a primary",
              Reference.DERIVED)
          .line("A_p = π·D_p²/4", CM2, "area of a primary", Reference.DERIVED)
          .line("f_c = 2·A_c/A_p", PERCENT, "share of a primary cut away", Reference.DERIVED)
          .line(
              "t_m = (π·(R² + r²) − 2·A_c)/(2·s)",
              MM,
              "average thickness of the wall over one period",
              Reference.DERIVED)
          .line("b_f = 2·s − D_s", MM, "face left of a primary on the wall line", Reference.DERIVED)
          .line("b_r = 0.3·D_p", MM, "least face", Reference.PRACTICE)
          .require("b_f ≥ b_r", "enough of the primary stays between the cuts", Reference.PRACTICE);

  /** The check. */
  public PrimaryCut() {
    super("primary-cut", "Primaries after the cuts", Family.GEOMETRY, SHEET);
  }

  @Override
  protected List<CheckResult> check(Job job, WallRun run) {
    double reach = (run.primary().diameter().si() + run.secondary().diameter().si()) / 2;
    double inside = Math.abs(run.primary().diameter().si() - run.secondary().diameter().si()) / 2;
    double spacing = run.line().spacing().si();
    Subject subject = Subject.run(run.id()).piles("all primaries");
    if (spacing >= reach) {
      return List.of(CheckResult.notChecked(this, subject, "The piles do not cut each other."));
    }
    if (spacing <= inside) {
      return List.of(
          CheckResult.notChecked(this, subject, "One pile would lie wholly inside the other."));
    }
    return List.of(CheckResult.of(this, subject, SetOut.piles(SHEET.bind(), run).calculate()));
  }
}
