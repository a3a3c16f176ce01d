package pilefolio.checks.stability;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import pilefolio.analysis.earth.Mobilisation;
import pilefolio.analysis.earth.PressureDiagram;
import pilefolio.analysis.earth.PressureSegment;
import pilefolio.analysis.wall.Equilibrium;
import pilefolio.analysis.wall.WallLoading;
import pilefolio.trace.Binding.Row;
import pilefolio.trace.Source;

/**
 * A stretch of wall over which the pressures on both sides are linear; kPa and m.
 *
 * @param label layer behind the wall
 * @param z1 level of its top
 * @param z2 level of its bottom
 * @param behind1 pressure behind at the top
 * @param behind2 pressure behind at the bottom
 * @param front1 pressure in front at the top
 * @param front2 pressure in front at the bottom
 */
record PressureRow(
    String label,
    double z1,
    double z2,
    double behind1,
    double behind2,
    double front1,
    double front2) {
  private static final double SAME_LEVEL = 1e-9;
  private static final double KILO = 1000;

  /** The rows of a wall in equilibrium, from the top of what is in equilibrium to its toe. */
  static List<PressureRow> of(WallLoading loading, Equilibrium e, double... cuts) {
    double toe = e.toeLevel();
    boolean reverses = e.pivotLevel().isPresent() && e.supportForce().isEmpty();
    if (!reverses) {
      return pair(loading, toe, Mobilisation.ACTIVE, e.statics().topLevel(), toe, cuts);
    }
    double pivot = e.pivotLevel().getAsDouble();
    List<PressureRow> rows =
        new ArrayList<>(
            pair(loading, toe, Mobilisation.ACTIVE, Double.POSITIVE_INFINITY, pivot, cuts));
    rows.addAll(pair(loading, toe, Mobilisation.PASSIVE, pivot, toe, cuts));
    return rows;
  }

  private static List<PressureRow> pair(
      WallLoading loading,
      double toe,
      Mobilisation stateBehind,
      double from,
      double to,
      double... cuts) {
    PressureDiagram behind = loading.pressures().behind(stateBehind, toe);
    PressureDiagram front =
        loading
            .pressures()
            .front(
                stateBehind == Mobilisation.ACTIVE ? Mobilisation.PASSIVE : Mobilisation.ACTIVE,
                toe);
    double[] all = Arrays.copyOf(cuts, cuts.length + 2);
    all[cuts.length] = from;
    all[cuts.length + 1] = to;
    List<PressureRow> rows = new ArrayList<>();
    for (double[] stretch : stretches(behind, front, all)) {
      double mid = (stretch[0] + stretch[1]) / 2;
      if (mid < from && mid > to) {
        rows.add(row(behind, front, stretch[0], stretch[1]));
      }
    }
    return rows;
  }

  /** Upper and lower ends of the stretches over which both diagrams are linear, from the top. */
  static List<double[]> stretches(PressureDiagram behind, PressureDiagram front, double... cuts) {
    TreeSet<Double> levels = new TreeSet<>(behind.breaks());
    levels.addAll(front.breaks());
    double top = levels.last();
    double bottom = levels.first();
    for (double cut : cuts) {
      if (cut < top && cut > bottom) {
        levels.add(cut);
      }
    }
    List<double[]> stretches = new ArrayList<>();
    double upper = top;
    for (double lower : levels.descendingSet()) {
      if (upper - lower > SAME_LEVEL) {
        stretches.add(new double[] {upper, lower});
        upper = lower;
      }
    }
    return stretches;
  }

  private static PressureRow row(
      PressureDiagram behind, PressureDiagram front, double upper, double lower) {
    return new PressureRow(
        behind.holding(upper, lower).map(s -> s.top().layer()).orElse("water"),
        upper,
        lower,
        at(behind, upper, lower, upper),
        at(behind, upper, lower, lower),
        at(front, upper, lower, upper),
        at(front, upper, lower, lower));
  }

  /** Pressure of a diagram at one end of a stretch. */
  static double at(PressureDiagram d, double upper, double lower, double level) {
    return d.holding(upper, lower).map((PressureSegment s) -> s.pressureAt(level)).orElse(0.0);
  }

  double net1() {
    return behind1 - front1;
  }

  double net2() {
    return behind2 - front2;
  }

  /** The row with its pressures on both sides, in Pa. */
  Row bound() {
    Source level = new Source.Layout("break of the diagrams");
    Source p = new Source.Line("pressure-active", "Active and passive pressure on the wall", "p");
    return Row.of(label)
        .set("z_1", z1, level)
        .set("z_2", z2, level)
        .set("p_{b,1}", KILO * behind1, p)
        .set("p_{b,2}", KILO * behind2, p)
        .set("p_{f,1}", KILO * front1, p)
        .set("p_{f,2}", KILO * front2, p);
  }
}
