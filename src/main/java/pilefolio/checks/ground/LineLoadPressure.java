package pilefolio.checks.ground;

import static pilefolio.units.Units.KN_M;
import static pilefolio.units.Units.KPA;
import static pilefolio.units.Units.M;
import static pilefolio.units.Units.ONE;

import pilefolio.checks.From;
import pilefolio.checks.situation.DesignSituation;
import pilefolio.checks.situation.LoadsBehind;
import pilefolio.model.LoadKind;
import pilefolio.model.LocalLoad;
import pilefolio.trace.Binding;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.CalcTable;
import pilefolio.trace.Choice;
import pilefolio.trace.Reference;

/** Pressure on the wall from a line load along it. */
public final class LineLoadPressure extends LocalLoadCheck {
  private static final Reference NAVFAC =
      Reference.memory("NAVFAC DM-7.02 (1986), after Terzaghi (1954)", "Chapter 3, Figure 11");

  static final CalcSheet ADJUSTED =
      CalcSheet.named("Pressure from a line load, adjusted elastic form")
          .given("Q", KN_M, "line load")
          .given("x", M, "distance from the wall")
          .given("z_L", M, "level at which it acts")
          .given("z_e", M, "design excavation level")
          .line("H = z_L − z_e", M, "height below the load", Reference.DERIVED)
          .line("m = x/H", ONE, "distance over height", Reference.DERIVED)
          .note("Below the excavation the same form is continued. Without factor.")
          .table(
              CalcTable.of(TABLE, "From the level of the load down", "place")
                  .given("z", M, "level")
                  .line("n = (z_L − z)/H", ONE, "depth over height", Reference.DERIVED)
                  .choose(
                      "p_L",
                      KPA,
                      "pressure on the wall",
                      NAVFAC,
                      Choice.when("m ≤ 0.4", "Q/H·0.203·n/(0.16 + n²)²")
                          .otherwise("Q/H·1.28·m²·n/(m² + n²)²")));

  static final CalcSheet DOUBLED =
      CalcSheet.named("Pressure from a line load, elastic stress doubled")
          .given("Q", KN_M, "line load")
          .given("x", M, "distance from the wall")
          .given("z_L", M, "level at which it acts")
          .note("Elastic stress, doubled because the wall is taken not to yield. Without factor.")
          .table(
              CalcTable.of(TABLE, "From the level of the load down", "place")
                  .given("z", M, "level")
                  .line("d = z_L − z", M, "depth below the load", Reference.DERIVED)
                  .line(
                      "p_L = 4·Q/π·x²·d/(x² + d²)²",
                      KPA,
                      "pressure on the wall",
                      Reference.memory("Boussinesq, line load on a half space", "")));

  /** The check. */
  public LineLoadPressure() {
    super(LoadKind.LINE, ADJUSTED, DOUBLED);
  }

  @Override
  public String id() {
    return "line-load-pressure";
  }

  @Override
  public String title() {
    return "Pressure from a line load";
  }

  @Override
  Binding bind(DesignSituation s, LocalLoad load) {
    boolean adjusted = LoadsBehind.adjusted(s, load);
    Binding binding =
        (adjusted ? ADJUSTED : DOUBLED)
            .bind()
            .set("Q", From.cell(load.lineLoad().orElseThrow()))
            .set("x", From.cell(load.distance()))
            .set("z_L", From.cell(load.level()));
    return adjusted
        ? binding.set("z_e", From.layout(s.designExcavation(), "design excavation level"))
        : binding;
  }
}
