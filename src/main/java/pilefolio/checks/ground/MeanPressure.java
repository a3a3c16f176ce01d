package pilefolio.checks.ground;

import static pilefolio.units.Units.KPA;
import static pilefolio.units.Units.M;
import static pilefolio.units.Units.ONE;

import pilefolio.analysis.earth.ActingWidth;
import pilefolio.analysis.earth.Mobilisation;
import pilefolio.analysis.earth.PressureDiagram;
import pilefolio.analysis.earth.PressureNode;
import pilefolio.analysis.earth.PressureSegment;
import pilefolio.analysis.earth.SoilLayer;
import pilefolio.analysis.earth.WallGround;
import pilefolio.trace.Binding;
import pilefolio.trace.Binding.Row;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.CalcTable;
import pilefolio.trace.Reference;
import pilefolio.trace.Source;

/** The pressure on single piles below the excavation as a mean over the length of wall. */
final class MeanPressure {
  private static final String TABLE = "mean";
  private static final double KILO = 1000;

  private MeanPressure() {}

  /** A sheet of pressures with the table of means after it. */
  static CalcSheet after(CalcSheet pressure) {
    return pressure
        .retitled(pressure.title() + ", single piles")
        .table(
            CalcTable.of(TABLE, "Mean over the length of wall", "layer")
                .given("z", M, "level")
                .given("p_1", KPA, "pressure of the table above")
                .given("u_1", KPA, "pore pressure of the table above")
                .given("r_E", ONE, "share of the length on which earth pressure acts")
                .given("r_W", ONE, "share of the length on which water acts")
                .line("p_w = γ_{G,w}·u_1", KPA, "water in it", Reference.DERIVED)
                .line(
                    "p_m = r_E·(p_1 − p_w) + r_W·p_w",
                    KPA,
                    "mean pressure on the wall",
                    Reference.DERIVED));
  }

  /** Hands the rows to a sheet. */
  static void rows(
      Binding binding,
      WallGround ground,
      boolean behind,
      Mobilisation state,
      PressureDiagram where) {
    Source table = new Source.Layout("table above");
    Source share =
        new Source.Line("passive-width", "Width of the ground before single piles", "r_p");
    ActingWidth width = ground.factors().width();
    double excavation = ground.front().groundLevel();
    for (PressureSegment s : where.segments()) {
      double mid = (s.top().level() + s.bottom().level()) / 2;
      boolean free = s.top().layer().equals("water");
      SoilLayer layer = ground.layers(behind).below(mid);
      double earth = free ? 1 : width.earth(state, layer, excavation - mid);
      double water = free ? 1 : width.water(excavation - mid);
      for (PressureNode n : new PressureNode[] {s.top(), s.bottom()}) {
        binding.row(
            TABLE,
            Row.of(n.layer())
                .set("z", n.level(), new Source.Layout("break of the diagram"))
                .set("p_1", KILO * n.pressure(), table)
                .set("u_1", KILO * n.u(), table)
                .set("r_E", earth, share)
                .set("r_W", water, share));
      }
    }
  }
}
