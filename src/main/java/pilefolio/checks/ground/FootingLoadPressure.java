package pilefolio.checks.ground;

import static pilefolio.units.Units.KPA;
import static pilefolio.units.Units.M;
import static pilefolio.units.Units.ONE;

import pilefolio.checks.From;
import pilefolio.checks.situation.DesignSituation;
import pilefolio.model.LoadKind;
import pilefolio.model.LocalLoad;
import pilefolio.trace.Binding;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.CalcTable;
import pilefolio.trace.Reference;

/** Pressure on the wall from a loaded rectangle, such as a neighbour's footing at its own level. */
public final class FootingLoadPressure extends LocalLoadCheck {
  private static final Reference HOLL =
      Reference.memory("Holl (1940), rectangle on a half space", "");

  static final CalcSheet SHEET =
      CalcSheet.named("Pressure from a footing")
          .given("q", KPA, "load on the footing")
          .given("a", M, "distance from the wall to the near edge")
          .given("b", M, "width across the wall")
          .given("L", M, "length along the wall")
          .given("y", M, "offset of its middle along the wall from the section")
          .given("z_L", M, "level at which it acts")
          .line("c = a + b", M, "distance to the far edge", Reference.DERIVED)
          .line("y_1 = L/2 − y", M, "from the section to one end", Reference.DERIVED)
          .line("y_2 = L/2 + y", M, "from the section to the other end", Reference.DERIVED)
          .note(
              "Elastic stress of ground that keeps its volume, doubled because the wall is taken not"
                  + " to yield. Without factor.")
          .table(
              CalcTable.of(TABLE, "From the level of the footing down", "place")
                  .given("z", M, "level")
                  .line("d = z_L − z", M, "depth below the footing", Reference.DERIVED)
                  .line("I_1 = " + corner("c", "y_1"), ONE, "far corner, one end", HOLL)
                  .line("I_2 = " + corner("c", "y_2"), ONE, "far corner, other end", HOLL)
                  .line("I_3 = " + corner("a", "y_1"), ONE, "near corner, one end", HOLL)
                  .line("I_4 = " + corner("a", "y_2"), ONE, "near corner, other end", HOLL)
                  .line("p_L = q/π·(I_1 + I_2 − I_3 − I_4)", KPA, "pressure on the wall", HOLL));

  private static String corner(String x, String y) {
    String r = "√(" + x + "² + " + y + "² + d²)";
    return "atan("
        + x
        + "·"
        + y
        + "/(d·"
        + r
        + ")) − "
        + x
        + "·"
        + y
        + "·d/(("
        + x
        + "² + d²)·"
        + r
        + ")";
  }

  /** The check. */
  public FootingLoadPressure() {
    super(LoadKind.FOOTING, SHEET);
  }

  @Override
  public String id() {
    return "footing-pressure";
  }

  @Override
  public String title() {
    return "Pressure from a footing";
  }

  @Override
  Binding bind(DesignSituation s, LocalLoad load) {
    return SHEET
        .bind()
        .set("q", From.cell(load.pressure().orElseThrow()))
        .set("a", From.cell(load.distance()))
        .set("b", From.cell(load.width().orElseThrow()))
        .set("L", From.cell(load.length().orElseThrow()))
        .set("y", load.offset().map(From::cell).orElse(From.layout(0, "opposite its middle")))
        .set("z_L", From.cell(load.level()));
  }
}
