package pilefolio.checks.geometry;

import static pilefolio.units.Units.M;
import static pilefolio.units.Units.MM;
import static pilefolio.units.Units.MM_M;
import static pilefolio.units.Units.ONE;

import java.util.List;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck;
import pilefolio.checks.Subject;
import pilefolio.model.WallRun;
import pilefolio.standards.ToleranceSet;
import pilefolio.trace.Binding;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Given;
import pilefolio.trace.Reference;
import pilefolio.trace.Source;

/** Whether the tolerances agreed are tight enough to design an overlap with. */
public final class ToleranceChoice extends RunCheck {
  private static final double USUAL = 75;
  private static final double ENTERED = 50;

  private static final CalcSheet SHEET =
      CalcSheet.named("Tolerances for a secant wall")
          .given("D_p", MM, "diameter of the primaries")
          .given("D_s", MM, "diameter of the secondaries")
          .given("s", MM, "spacing of a primary and the next secondary, centre to centre")
          .given("e_0", MM, "tolerance on position at the guide wall")
          .given("n", ONE, "tolerance on verticality, 1 in n")
          .given("n_min", ONE, "widest verticality with which an overlap may be designed")
          .given("c_min", MM, "least overlap that must remain")
          .line("c_0 = (D_p + D_s)/2 − s", MM, "overlap as set out", Reference.DERIVED)
          .line("c_t = c_0 − 2·e_0", MM, "overlap left at the guide wall", Reference.DERIVED)
          .require("n ≥ n_min", "no general tolerance is used for the overlap", Reference.PRACTICE)
          .require(
              "c_t ≥ c_min", "setting out alone does not use up the overlap", Reference.PRACTICE)
          .require("c_t > 0", "the piles meet at the guide wall", Reference.DERIVED);

  private static final CalcSheet CUT_OFF =
      CalcSheet.named("Tolerance in plan at cut-off level")
          .given("e_0", MM, "tolerance on position at the guide wall")
          .given("g", MM_M, "growth of the tolerance with depth")
          .given("L_P", M, "level of the platform")
          .given("L_C", M, "cut-off level")
          .line("h_C = L_P − L_C", M, "depth of the cut-off", Reference.DERIVED)
          .line("e_C = e_0 + g·h_C", MM, "tolerance in plan at cut-off", Reference.DERIVED)
          .note(
              "Permanent works in front of the wall are to stand clear of this tolerance, or the"
                  + " piles are trimmed.");

  /** The check. */
  public ToleranceChoice() {
    super("tolerance-set", "Tolerances chosen", Family.GEOMETRY, SHEET, CUT_OFF);
  }

  @Override
  protected List<CheckResult> check(Job job, WallRun run) {
    ToleranceSet set = SetOut.set(job);
    boolean entered = job.submission().methods().verticalityTolerance().isPresent();
    Given least =
        entered
            ? From.layout(ENTERED, "practice where the user enters a verticality")
            : From.layout(USUAL, "practice for secant walls");
    Given position = SetOut.position(job, run);
    Binding binding =
        SetOut.piles(SHEET.bind(), run)
            .set("e_0", position)
            .set("n", SetOut.verticality(job))
            .set("n_min", least)
            .set("c_min", From.cell(job.submission().methods().overlapRequired()));
    return List.of(
        CheckResult.of(
            this,
            Subject.run(run.id()),
            binding.calculate(),
            CUT_OFF
                .bind()
                .set("e_0", position)
                .set("g", new Given(set.growth(), new Source.TableRow("tolerances", set.title())))
                .set("L_P", From.cell(run.levels().platform()))
                .set("L_C", From.cell(run.levels().cutOff()))
                .calculate()));
  }
}
