package pilefolio.checks.ground;

import static pilefolio.units.Units.DEG;
import static pilefolio.units.Units.KPA;
import static pilefolio.units.Units.M;

import pilefolio.checks.From;
import pilefolio.checks.situation.DesignSituation;
import pilefolio.model.LoadKind;
import pilefolio.model.LocalLoad;
import pilefolio.trace.Binding;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.CalcTable;
import pilefolio.trace.Reference;

/** Pressure on the wall from a loaded strip along it. */
public final class StripLoadPressure extends LocalLoadCheck {
  private static final Reference STRIP =
      Reference.memory("Das, Principles of Foundation Engineering, and Jarquio (1981)", "");

  static final CalcSheet SHEET =
      CalcSheet.named("Pressure from a strip along the wall")
          .given("q", KPA, "load on the strip")
          .given("a", M, "distance from the wall to the near edge")
          .given("b", M, "width of the strip")
          .given("z_L", M, "level at which it acts")
          .note("Elastic stress, doubled because the wall is taken not to yield. Without factor.")
          .table(
              CalcTable.of(TABLE, "From the level of the load down", "place")
                  .given("z", M, "level")
                  .line("d = z_L − z", M, "depth below the load", Reference.DERIVED)
                  .line("θ_1 = atan(a/d)", DEG, "angle to the near edge", Reference.DERIVED)
                  .line("θ_2 = atan((a + b)/d)", DEG, "angle to the far edge", Reference.DERIVED)
                  .line("β = θ_2 − θ_1", DEG, "angle of the strip", Reference.DERIVED)
                  .line(
                      "p_L = 2·q/π·(β − sin(β)·cos(θ_1 + θ_2))",
                      KPA,
                      "pressure on the wall",
                      STRIP));

  /** The check. */
  public StripLoadPressure() {
    super(LoadKind.STRIP, SHEET);
  }

  @Override
  public String id() {
    return "strip-load-pressure";
  }

  @Override
  public String title() {
    return "Pressure from a strip load";
  }

  @Override
  Binding bind(DesignSituation s, LocalLoad load) {
    return SHEET
        .bind()
        .set("q", From.cell(load.pressure().orElseThrow()))
        .set("a", From.cell(load.distance()))
        .set("b", From.cell(load.width().orElseThrow()))
        .set("z_L", From.cell(load.level()));
  }
}
