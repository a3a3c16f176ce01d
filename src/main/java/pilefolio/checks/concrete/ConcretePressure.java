package pilefolio.checks.concrete;

import static pilefolio.units.Units.KN_M3;
import static pilefolio.units.Units.KPA;
import static pilefolio.units.Units.M;

import java.util.List;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck;
import pilefolio.checks.Subject;
import pilefolio.checks.geometry.Levels;
import pilefolio.model.PileKind;
import pilefolio.model.WallRun;
import pilefolio.trace.Binding;
import pilefolio.trace.Binding.Row;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.CalcTable;
import pilefolio.trace.Calculation;
import pilefolio.trace.Choice;
import pilefolio.trace.Reference;

/** Pressure of the fresh concrete on the ground, for soft layers and the guide wall. */
public final class ConcretePressure extends RunCheck {
  private static final Reference LINGS =
      Reference.memory("Lings et al., 1994", "pressure of fresh concrete in diaphragm walls");

  private static final CalcSheet SHEET =
      CalcSheet.named("Pressure of the fresh concrete on the ground")
          .given("γ_c", KN_M3, "weight of the fresh concrete")
          .given("γ_w", KN_M3, "weight of the fluid it displaces or of its pore water")
          .given("H", M, "depth of the concrete")
          .line("h_k = H/3", M, "depth below which it stiffens while it rises", LINGS)
          .table(
              CalcTable.of("depths", "Pressure with depth", "at")
                  .given("z", M, "depth below the top of the concrete")
                  .choose(
                      "p_z",
                      KPA,
                      "pressure on the ground",
                      LINGS,
                      Choice.when("z ≤ h_k", "γ_c·z").otherwise("γ_w·z + (γ_c − γ_w)·h_k"))
                  .largest("p_max", "p_z", "greatest pressure"))
          .line("p_f = γ_c·H", KPA, "pressure if all of it were fluid", Reference.DERIVED)
          .line("r_f = p_max/p_f", pilefolio.units.Units.PERCENT, "share of it", Reference.DERIVED);

  /** The check. */
  public ConcretePressure() {
    super("concrete-pressure", "Pressure of the fresh concrete", Family.CONCRETE, SHEET);
  }

  @Override
  public boolean derivation() {
    return true;
  }

  @Override
  protected List<CheckResult> check(Job job, WallRun run) {
    Calculation levels = Levels.of(job, run, PileKind.SECONDARY);
    double depth = levels.value("l_c");
    if (depth <= 0) {
      throw new MissingInput("The levels give no length to be cast.");
    }
    Binding binding =
        SHEET
            .bind()
            .set("γ_c", From.cell(job.submission().mix(run.secondary()).unitWeight()))
            .set("γ_w", From.layout(9810, "water"))
            .set("H", From.line(Levels.CHECK, levels, "l_c"));
    for (int third = 1; third <= 3; third++) {
      binding.row(
          "depths",
          Row.of(third == 3 ? "toe" : third + "/3 of the depth")
              .set("z", From.layout(depth * third / 3, "share of the depth")));
    }
    return List.of(
        CheckResult.of(this, Subject.run(run.id()).piles("secondaries"), binding.calculate()));
  }
}
