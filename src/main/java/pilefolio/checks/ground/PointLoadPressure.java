package pilefolio.checks.ground;

import static pilefolio.units.Units.DEG;
import static pilefolio.units.Units.KN;
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

/** Pressure on the wall from a single force. */
public final class PointLoadPressure extends LocalLoadCheck {
  private static final Reference NAVFAC =
      Reference.memory("NAVFAC DM-7.02 (1986), after Terzaghi (1954)", "Chapter 3, Figure 11");

  static final CalcSheet ADJUSTED =
      CalcSheet.named("Pressure from a point load, adjusted elastic form")
          .given("Q", KN, "load")
          .given("x", M, "distance from the wall")
          .given("y", M, "offset along the wall from the section")
          .given("z_L", M, "level at which it acts")
          .given("z_e", M, "design excavation level")
          .line("H = z_L − z_e", M, "height below the load", Reference.DERIVED)
          .line("m = x/H", ONE, "distance over height", Reference.DERIVED)
          .line("θ = atan(abs(y)/x)", DEG, "angle off the normal to the wall", Reference.DERIVED)
          .choose(
              "f_y",
              ONE,
              "share of the pressure beside the load",
              NAVFAC,
              Choice.when("1.1·θ < 90[°]", "cos(1.1·θ)²").otherwise("0"))
          .note("Below the excavation the same form is continued. Without factor.")
          .table(
              CalcTable.of(TABLE, "From the level of the load down", "place")
                  .given("z", M, "level")
                  .line("n = (z_L − z)/H", ONE, "depth over height", Reference.DERIVED)
                  .choose(
                      "p_o",
                      KPA,
                      "pressure opposite the load",
                      NAVFAC,
                      Choice.when("m ≤ 0.4", "Q/H²·0.28·n²/(0.16 + n²)^3")
                          .otherwise("Q/H²·1.77·m²·n²/(m² + n²)^3"))
                  .line("p_L = f_y·p_o", KPA, "pressure on the wall", NAVFAC));

  static final CalcSheet DOUBLED =
      CalcSheet.named("Pressure from a point load, elastic stress doubled")
          .given("Q", KN, "load")
          .given("x", M, "distance from the wall")
          .given("y", M, "offset along the wall from the section")
          .given("z_L", M, "level at which it acts")
          .note(
              "Elastic stress of ground that keeps its volume, doubled because the wall is taken not"
                  + " to yield. Without factor.")
          .table(
              CalcTable.of(TABLE, "From the level of the load down", "place")
                  .given("z", M, "level")
                  .line("d = z_L − z", M, "depth below the load", Reference.DERIVED)
                  .line("R = √(x² + y² + d²)", M, "distance to the load", Reference.DERIVED)
                  .line(
                      "p_L = 3·Q/π·x²·d/R^5",
                      KPA,
                      "pressure on the wall",
                      Reference.memory("Boussinesq, point load on a half space", "")));

  /** The check. */
  public PointLoadPressure() {
    super(LoadKind.POINT, ADJUSTED, DOUBLED);
  }

  @Override
  public String id() {
    return "point-load-pressure";
  }

  @Override
  public String title() {
    return "Pressure from a point load";
  }

  @Override
  Binding bind(DesignSituation s, LocalLoad load) {
    boolean adjusted = LoadsBehind.adjusted(s, load);
    Binding binding =
        (adjusted ? ADJUSTED : DOUBLED)
            .bind()
            .set("Q", From.cell(load.force().orElseThrow()))
            .set("x", From.cell(load.distance()))
            .set("y", load.offset().map(From::cell).orElse(From.layout(0, "opposite the load")))
            .set("z_L", From.cell(load.level()));
    return adjusted
        ? binding.set("z_e", From.layout(s.designExcavation(), "design excavation level"))
        : binding;
  }
}
