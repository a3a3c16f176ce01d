package pilefolio.checks.sequence;

import static pilefolio.units.Units.M3;
import static pilefolio.units.Units.M3_MIN;
import static pilefolio.units.Units.MIN;
import static pilefolio.units.Units.ONE;

import java.util.ArrayList;
import java.util.List;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck;
import pilefolio.checks.Subject;
import pilefolio.checks.concrete.ConcreteVolume;
import pilefolio.checks.geometry.Levels;
import pilefolio.model.ConcreteSupply;
import pilefolio.model.PileKind;
import pilefolio.model.WallRun;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Calculation;
import pilefolio.trace.Reference;

/** Trucks to keep one rig supplied, and whether a truck is empty before its concrete is too old. */
public final class TruckFleet extends RunCheck {
  private static final CalcSheet SHEET =
      CalcSheet.named("Trucks for one rig")
          .given("n_t", ONE, "trucks for one pile")
          .given("V_t", M3, "concrete in one truck")
          .given("t_c", MIN, "round trip of a truck")
          .given("T", MIN, "time for one pile")
          .given("η", ONE, "share of the time that is worked")
          .given("Q", M3_MIN, "effective output of the pump")
          .given("t_v", MIN, "time in which the mix can be worked")
          .line("N_f = ceil(n_t·t_c/(T/η))", ONE, "trucks on the road", Reference.DERIVED)
          .line(
              "t_l = t_c/2 + V_t/Q",
              MIN,
              "time from loading until a truck is empty, half the round trip on the way",
              Reference.PRACTICE)
          .require("t_l ≤ t_v", "concrete is placed while it can be worked", Reference.PRACTICE);

  /** The check. */
  public TruckFleet() {
    super("truck-fleet", "Trucks for one rig", Family.CONCRETE, SHEET);
  }

  @Override
  protected List<CheckResult> check(Job job, WallRun run) {
    ConcreteSupply supply = job.submission().supply();
    List<CheckResult> results = new ArrayList<>();
    for (PileKind kind : PileKind.secant()) {
      Calculation volume = ConcreteVolume.of(job, run, kind);
      results.add(
          CheckResult.of(
              this,
              Subject.run(run.id()).piles(Levels.plural(kind)),
              SHEET
                  .bind()
                  .set("n_t", From.line(ConcreteVolume.CHECK, volume, "n_t"))
                  .set("V_t", From.cell(supply.truckVolume()))
                  .set("t_c", From.cell(supply.roundTrip()))
                  .set("T", From.line(CycleTime.CHECK, CycleTime.of(job, run, kind), "T"))
                  .set("η", From.cell(CycleTime.crew(job, run).availability()))
                  .set("Q", From.cell(supply.pumpRate()))
                  .set("t_v", From.cell(job.submission().mix(run.piles(kind)).workabilityLife()))
                  .calculate()));
    }
    return results;
  }
}
