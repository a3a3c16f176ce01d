package pilefolio.checks.concrete;

import static pilefolio.units.Units.KN_M3;
import static pilefolio.units.Units.KPA;
import static pilefolio.units.Units.M;
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
import pilefolio.checks.geometry.SetOut;
import pilefolio.model.PileKind;
import pilefolio.model.Technique;
import pilefolio.model.Value;
import pilefolio.model.WallRun;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Reference;

/** Whether the concrete in the casing outweighs the water outside its shoe. */
public final class CasingHead extends RunCheck {
  private static final CalcSheet SHEET =
      CalcSheet.named("Head of concrete over the casing shoe")
          .given("γ_c", KN_M3, "weight of the fresh concrete")
          .given("h_c", M, "head of concrete kept above the shoe")
          .given("L_W", M, "groundwater level while piles are bored")
          .given("L_T", M, "level of the shoe at its deepest, the toe")
          .line("h_w = L_W − L_T", M, "head of water at the shoe", Reference.DERIVED)
          .line("p_c = γ_c·h_c", KPA, "pressure of the concrete", Reference.DERIVED)
          .line("p_w = 9.81[kN/m³]·h_w", KPA, "pressure of the water", Reference.DERIVED)
          .line("r_p = p_c/p_w", ONE, "ratio of the pressures", Reference.DERIVED)
          .require("r_p ≥ 1.1", "neither water nor soft soil enters the bore", Reference.PRACTICE)
          .note("In soft soil the same margin is kept over the pressure of the soil.");

  /** The check. */
  public CasingHead() {
    super("casing-head", "Head over the casing shoe", Family.CONCRETE, SHEET);
  }

  @Override
  protected List<CheckResult> check(Job job, WallRun run) {
    Optional<Value> water = job.submission().profile(run).groundwater();
    List<CheckResult> results = new ArrayList<>();
    if (run.technique() != Technique.CASED_AUGER || water.isEmpty()) {
      return results;
    }
    for (PileKind kind : PileKind.secant()) {
      var toe = SetOut.toe(job, run, kind);
      if (water.get().si() <= toe.si()) {
        continue;
      }
      results.add(
          CheckResult.of(
              this,
              Subject.run(run.id()).piles(Levels.plural(kind)),
              SHEET
                  .bind()
                  .set("γ_c", From.cell(job.submission().mix(run.piles(kind)).unitWeight()))
                  .set("h_c", From.cell(job.submission().supply().casingHead()))
                  .set("L_W", From.cell(water.get()))
                  .set("L_T", toe)
                  .calculate()));
    }
    return results;
  }
}
