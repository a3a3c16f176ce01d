package pilefolio.checks.concrete;

import static pilefolio.units.Units.KN_M3;
import static pilefolio.units.Units.M;
import static pilefolio.units.Units.M2;
import static pilefolio.units.Units.M3;
import static pilefolio.units.Units.MM;
import static pilefolio.units.Units.ONE;
import static pilefolio.units.Units.T;

import java.util.ArrayList;
import java.util.List;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck;
import pilefolio.checks.Subject;
import pilefolio.checks.geometry.Levels;
import pilefolio.checks.geometry.SetOut;
import pilefolio.model.GroundProfile;
import pilefolio.model.Layer;
import pilefolio.model.PileKind;
import pilefolio.model.WallRun;
import pilefolio.trace.Binding;
import pilefolio.trace.Binding.Row;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.CalcTable;
import pilefolio.trace.Given;
import pilefolio.trace.Reference;

/** Spoil of one pile and of the run, loose. */
public final class Spoil extends RunCheck {
  private static final CalcSheet SHEET =
      CalcSheet.named("Spoil of one pile and of the run")
          .given("D", MM, "diameter of the bore")
          .given("N", ONE, "number of piles")
          .line("A = π·D²/4", M2, "area of the bore", Reference.DERIVED)
          .table(
              CalcTable.of("layers", "Spoil by layers", "layer")
                  .given("h", M, "thickness bored")
                  .given("β", ONE, "loose over solid volume")
                  .given("γ", KN_M3, "unit weight in the ground")
                  .line("V_h = A·h·β", M3, "loose volume", Reference.DERIVED)
                  .line("m_h = A·h·γ/9.81[N/kg]", T, "mass", Reference.DERIVED)
                  .sum("V_s", "V_h", "loose volume of one pile")
                  .sum("m_s", "m_h", "mass of one pile"))
          .line("V_N = N·V_s", M3, "loose volume of all", Reference.DERIVED)
          .line("m_N = N·m_s", T, "mass of all", Reference.DERIVED)
          .note(
              "What a secondary cuts from the primaries is concrete and counted as ground here; it"
                  + " is kept apart on site.");

  /** The check. */
  public Spoil() {
    super("spoil", "Spoil", Family.CONCRETE, SHEET);
  }

  @Override
  public boolean derivation() {
    return true;
  }

  @Override
  protected List<CheckResult> check(Job job, WallRun run) {
    List<CheckResult> results = new ArrayList<>();
    for (PileKind kind : PileKind.secant()) {
      double count = run.layout().piles().stream().filter(p -> p.kind() == kind).count();
      Binding binding =
          SHEET
              .bind()
              .set("D", From.cell(run.piles(kind).diameter()))
              .set("N", From.layout(count, "piles of the run"));
      rows(binding, job, run, SetOut.toe(job, run, kind).si());
      results.add(
          CheckResult.of(
              this, Subject.run(run.id()).piles(Levels.plural(kind)), binding.calculate()));
    }
    return results;
  }

  private static void rows(Binding binding, Job job, WallRun run, double toe) {
    GroundProfile profile = job.submission().profile(run);
    double top = run.levels().platform().si();
    if (toe >= top || profile.base().si() > toe) {
      throw new MissingInput("The ground is not known from the platform down to the toe.");
    }
    for (int i = 0; i < profile.layers().size() && top > toe; i++) {
      Layer layer = profile.layers().get(i);
      double bottom = Math.max(profile.bottom(i), toe);
      if (bottom < top) {
        binding.row(
            "layers",
            Row.of(layer.name())
                .set("h", From.layout(top - bottom, "levels of the layer"))
                .set("β", bulking(layer))
                .set("γ", From.cell(layer.unitWeight())));
        top = bottom;
      }
    }
  }

  private static Given bulking(Layer layer) {
    return switch (layer.kind()) {
      case SAND, GRAVEL -> From.layout(1.2, "practice, 1.10 to 1.20");
      case CLAY, SILT, FILL -> From.layout(1.3, "practice, 1.2 to 1.4");
      case ROCK -> From.layout(1.5, "practice, 1.4 to 1.7");
    };
  }
}
