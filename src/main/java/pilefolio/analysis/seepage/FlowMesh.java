package pilefolio.analysis.seepage;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * Lines of a rectangular mesh: fine at the wall, its toe and the surface in front, wider with
 * distance. Vertical lines x run from behind to the front, with the wall at zero; horizontal lines
 * y from the base up.
 */
final class FlowMesh {
  private static final double GROWTH = 0.3;

  private final double[] x;
  private final double[] y;

  private FlowMesh(double[] x, double[] y) {
    this.x = x;
    this.y = y;
  }

  double[] x() {
    return x;
  }

  double[] y() {
    return y;
  }

  /**
   * A mesh for a problem.
   *
   * @param refinement 1 for the usual mesh, 2 for half its spacing
   */
  static FlowMesh of(FlowProblem p, double refinement) {
    double scale = Math.max(p.surfaceBehind(), p.surfaceFront()) - p.toe();
    double shorter = Math.min(p.surfaceBehind(), p.surfaceFront()) - p.toe();
    double least = Math.min(shorter / 14, scale / 20) / refinement;
    double growth = GROWTH / refinement;
    TreeSet<Double> key = new TreeSet<>();
    double top = Math.max(p.surfaceBehind(), p.surfaceFront());
    for (double level : new double[] {p.base(), p.toe(), p.surfaceBehind(), p.surfaceFront()}) {
      key.add(level);
    }
    for (PermeableLayer layer : p.layers()) {
      if (layer.bottom() > p.base() && layer.bottom() < top) {
        key.add(layer.bottom());
      }
    }
    List<Double> y = new ArrayList<>();
    Double from = null;
    for (double to : key) {
      if (from != null && to - from < 1e-6) {
        continue;
      }
      if (from != null) {
        divide(y, from, to, level -> spacing(p, level, least, growth));
      }
      from = to;
    }
    y.add(from);
    List<Double> x = new ArrayList<>();
    divide(x, -p.widthBehind(), 0, d -> least / 20 + growth * Math.abs(d));
    divide(x, 0, p.widthFront(), d -> least / 20 + growth * Math.abs(d));
    x.add(p.widthFront());
    return new FlowMesh(array(x), array(y));
  }

  private static double spacing(FlowProblem p, double level, double least, double growth) {
    double toToe = Math.abs(level - p.toe());
    double toFront = Math.abs(level - p.surfaceFront());
    return Math.min(least / 20 + growth * toToe, least + growth * toFront);
  }

  private interface Spacing {
    double at(double place);
  }

  /** Adds the lines from one place to another without the last one. */
  private static void divide(List<Double> lines, double from, double to, Spacing spacing) {
    List<Double> steps = new ArrayList<>();
    double at = from;
    while (at < to) {
      double step = spacing.at(at);
      // The spacing in the middle of the step decides; a few rounds are enough.
      for (int k = 0; k < 4; k++) {
        step = spacing.at(at + step / 2);
      }
      steps.add(step);
      at += step;
    }
    double stretch = (to - from) / (at - from);
    at = from;
    for (double step : steps) {
      lines.add(at);
      at += step * stretch;
    }
  }

  private static double[] array(List<Double> list) {
    return list.stream().mapToDouble(Double::doubleValue).toArray();
  }
}
