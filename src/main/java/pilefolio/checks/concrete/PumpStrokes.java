package pilefolio.checks.concrete;

import static pilefolio.units.Units.L;
import static pilefolio.units.Units.M;
import static pilefolio.units.Units.M2;
import static pilefolio.units.Units.MM;
import static pilefolio.units.Units.ONE;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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

/** Pump strokes to be counted for each record of the pour. */
public final class PumpStrokes extends RunCheck {
  private static final CalcSheet SHEET =
      CalcSheet.named("Pump strokes for each increment of the record")
          .given("D", MM, "diameter of the pile")
          .given("l_c", M, "cast length")
          .given("Δ_z", M, "length of one increment")
          .given("q", L, "volume of one stroke")
          .given("η_v", ONE, "share of the stroke delivered")
          .given("k", ONE, "concrete placed over nominal volume")
          .line("A = π·D²/4", M2, "area of the bore", Reference.DERIVED)
          .line("n_r = ceil(l_c/Δ_z)", ONE, "records for one pile", Reference.DERIVED)
          .line(
              "n_k = A·k·Δ_z/(q·η_v)", ONE, "strokes expected in one increment", Reference.DERIVED)
          .line(
              "n_a = ceil(A·1.15·Δ_z/(q·η_v))",
              ONE,
              "strokes from which an increment is accepted",
              Reference.PRACTICE)
          .line(
              "n_f = ceil(A·Δ_z/(q·η_v))",
              ONE,
              "strokes below which the pile is drilled again",
              Reference.PRACTICE)
          .note(
              "Each increment is judged by itself; an average over the pile is not an acceptance.");

  /** The check. */
  public PumpStrokes() {
    super("pump-strokes", "Strokes and records per increment", Family.CONCRETE, SHEET);
  }

  @Override
  public boolean derivation() {
    return true;
  }

  /** Speaks for its family: what is not asked of walls without primaries is not passed over. */
  @Override
  protected Optional<String> leftOut(WallRun run) {
    return run.type().bored()
        ? Optional.of("concrete and boring are checked for secant walls only in this version")
        : Optional.empty();
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
                  .set("l_c", From.line(Levels.CHECK, Levels.of(job, run, kind), "l_c"))
                  .set("Δ_z", From.cell(supply.logIncrement()))
                  .set("q", need(supply.strokeVolume(), "the volume of a pump stroke"))
                  .set("η_v", From.cell(supply.pumpEfficiency()))
                  .set("k", From.cell(Supply.overbreak(supply, kind)))
                  .calculate()));
    }
    return results;
  }
}
