package pilefolio.checks.concrete;

import static pilefolio.units.Units.M;
import static pilefolio.units.Units.M2;
import static pilefolio.units.Units.M3;
import static pilefolio.units.Units.MM;
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
import pilefolio.model.ConcreteSupply;
import pilefolio.model.PileKind;
import pilefolio.model.WallRun;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Reference;

/** Concrete to be pumped before the auger is lifted for good. */
public final class InitialHead extends RunCheck {
  private static final CalcSheet SHEET =
      CalcSheet.named("Head of concrete before the first lift")
          .given("D", MM, "diameter of the pile")
          .given("h_1", M, "head above the tip before the sustained lift")
          .given("k", ONE, "concrete placed over nominal volume")
          .line("A = π·D²/4", M2, "area of the bore", Reference.DERIVED)
          .line("V_0 = A·h_1", M3, "nominal volume of that head", Reference.DERIVED)
          .line("V_1 = k·V_0", M3, "concrete to be pumped for it", Reference.DERIVED)
          .condition("h_1 ≥ 1.5[m]", "the tip stays in concrete", Reference.PRACTICE)
          .note(
              "The auger is raised 150 mm to 300 mm to open the tip, pressure is awaited, and the"
                  + " auger is turned back to the toe before it is lifted.");

  /** The check. */
  public InitialHead() {
    super("initial-head", "Head before the first lift", Family.CONCRETE, SHEET);
  }

  @Override
  protected List<CheckResult> check(Job job, WallRun run) {
    ConcreteSupply supply = job.submission().supply();
    List<CheckResult> results = new ArrayList<>();
    for (PileKind kind : PileKind.secant()) {
      results.add(
          CheckResult.of(
              this,
              Subject.run(run.id()).piles(Levels.plural(kind)),
              SHEET
                  .bind()
                  .set("D", From.cell(run.piles(kind).diameter()))
                  .set("h_1", From.cell(supply.initialHead()))
                  .set("k", From.cell(Supply.overbreak(supply, kind)))
                  .calculate()));
    }
    return results;
  }
}
