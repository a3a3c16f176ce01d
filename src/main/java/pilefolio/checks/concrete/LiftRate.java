package pilefolio.checks.concrete;

import static pilefolio.units.Units.M2;
import static pilefolio.units.Units.M3_MIN;
import static pilefolio.units.Units.MM;
import static pilefolio.units.Units.M_MIN;
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

/** Whether the pump fills the bore as fast as the auger is lifted. */
public final class LiftRate extends RunCheck {
  private static final CalcSheet SHEET =
      CalcSheet.named("Rate of lifting and rate of pumping")
          .given("D", MM, "diameter of the pile")
          .given("Q", M3_MIN, "effective output of the pump")
          .given("k", ONE, "concrete placed over nominal volume")
          .given("v_l", M_MIN, "rate at which the auger is lifted")
          .line("A = π·D²/4", M2, "area of the bore", Reference.DERIVED)
          .line("v_w = Q/(A·k)", M_MIN, "fastest lift the pump can follow", Reference.DERIVED)
          .require("v_l ≤ v_w", "the bore is filled as fast as it is left", Reference.DERIVED)
          .note("The pump is calibrated before the first pile and every week.");

  /** The check. */
  public LiftRate() {
    super("lift-rate", "Lift rate and pump", Family.CONCRETE, SHEET);
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
                  .set("Q", From.cell(supply.pumpRate()))
                  .set("k", From.cell(Supply.overbreak(supply, kind)))
                  .set("v_l", From.cell(supply.liftRate()))
                  .calculate()));
    }
    return results;
  }
}
