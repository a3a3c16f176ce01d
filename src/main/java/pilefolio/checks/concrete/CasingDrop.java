package pilefolio.checks.concrete;

import static pilefolio.units.Units.M;
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
import pilefolio.model.PileKind;
import pilefolio.model.Technique;
import pilefolio.model.Tool;
import pilefolio.model.WallRun;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Reference;

/** How far the concrete sinks when the casing is pulled out of it. */
public final class CasingDrop extends RunCheck {
  private static final CalcSheet SHEET =
      CalcSheet.named("Drop of the concrete when the casing is pulled")
          .given("D_o", MM, "outside diameter of the casing")
          .given("d_i", MM, "inside diameter of the casing")
          .given("l_d", M, "length of casing in the ground")
          .line("r_h = 1 − (d_i/D_o)²", ONE, "drop for each length pulled", Reference.DERIVED)
          .line("Δ_h = r_h·l_d", M, "drop when all of it is pulled", Reference.DERIVED)
          .line("V_r = π·D_o²/4·Δ_h", M3, "concrete to be kept in hand", Reference.DERIVED)
          .note("Overbreak behind the casing makes the drop larger; the level is measured.");

  /** The check. */
  public CasingDrop() {
    super("casing-level-drop", "Drop of the concrete with the casing", Family.CONCRETE, SHEET);
  }

  @Override
  public boolean derivation() {
    return true;
  }

  @Override
  protected List<CheckResult> check(Job job, WallRun run) {
    List<CheckResult> results = new ArrayList<>();
    if (run.technique() != Technique.CASED_AUGER) {
      return results;
    }
    Tool tool = job.submission().tool(run);
    for (PileKind kind : PileKind.secant()) {
      results.add(
          CheckResult.of(
              this,
              Subject.run(run.id()).piles(Levels.plural(kind)),
              SHEET
                  .bind()
                  .set("D_o", need(tool.casingOuter(), "the outside diameter of the casing"))
                  .set("d_i", need(tool.casingInner(), "the inside diameter of the casing"))
                  .set("l_d", From.line(Levels.CHECK, Levels.of(job, run, kind), "l_d"))
                  .calculate()));
    }
    return results;
  }
}
