package pilefolio.analysis.load;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * Pressure down a wall as straight pieces.
 *
 * @param points levels and pressures from the top down; no pressure outside them
 */
public record PressurePolyline(List<Point> points) {
  private static final double SHARE_OF_PEAK = 0.01;
  private static final int FIRST_PIECES = 4;
  private static final int MOST_POINTS = 40;

  /** No pressure. */
  public static final PressurePolyline NONE = new PressurePolyline(List.of());

  /**
   * A point of it.
   *
   * @param level level, m
   * @param pressure pressure, kPa
   */
  public record Point(double level, double pressure) {}

  /** Copies the points. */
  public PressurePolyline {
    points = List.copyOf(points);
    for (int i = 1; i < points.size(); i++) {
      if (points.get(i).level() > points.get(i - 1).level()) {
        throw new IllegalArgumentException("points must run from the top down");
      }
    }
  }

  /**
   * A curve as straight pieces that leave it by no more than a hundredth of its peak.
   *
   * @param pressure pressure, kPa, at a level
   * @param top level of the top, m
   * @param bottom level of the bottom, m
   */
  public static PressurePolyline of(DoubleUnaryOperator pressure, double top, double bottom) {
    if (!(top > bottom)) {
      return NONE;
    }
    List<Point> points = new ArrayList<>();
    for (int i = 0; i <= FIRST_PIECES; i++) {
      // Local loads act near their level, so the first pieces shorten toward the top.
      double t = (double) i / FIRST_PIECES;
      double level = top - (top - bottom) * t * t;
      points.add(new Point(level, pressure.applyAsDouble(level)));
    }
    while (points.size() < MOST_POINTS) {
      double peak = 0;
      for (Point p : points) {
        peak = Math.max(peak, Math.abs(p.pressure()));
      }
      int worst = -1;
      double greatest = SHARE_OF_PEAK;
      Point added = null;
      for (int i = 0; i + 1 < points.size(); i++) {
        Point a = points.get(i);
        Point b = points.get(i + 1);
        double level = (a.level() + b.level()) / 2;
        double value = pressure.applyAsDouble(level);
        double error = Math.abs(value - (a.pressure() + b.pressure()) / 2);
        if (peak == 0 ? error > 0 : error / peak > greatest) {
          greatest = peak == 0 ? 0 : error / peak;
          worst = i;
          added = new Point(level, value);
        }
      }
      if (worst < 0) {
        break;
      }
      points.add(worst + 1, added);
    }
    return new PressurePolyline(points);
  }

  /**
   * Fewer points that leave the line by no more than a given pressure.
   *
   * @param most greatest difference, kPa
   */
  public PressurePolyline thinned(double most) {
    if (points.size() < 3) {
      return this;
    }
    List<Point> kept = new ArrayList<>();
    kept.add(points.get(0));
    thin(0, points.size() - 1, most, kept);
    return new PressurePolyline(kept);
  }

  private void thin(int from, int to, double most, List<Point> kept) {
    int worst = -1;
    double greatest = most;
    for (int i = from + 1; i < to; i++) {
      double error =
          Math.abs(
              points.get(i).pressure()
                  - between(points.get(from), points.get(to), points.get(i).level()));
      if (error > greatest) {
        greatest = error;
        worst = i;
      }
    }
    if (worst < 0) {
      kept.add(points.get(to));
    } else {
      thin(from, worst, most, kept);
      thin(worst, to, most, kept);
    }
  }

  /** Pressure at a level, kPa; where it steps, the mean of both values. */
  public double at(double level) {
    return (justAbove(level) + justBelow(level)) / 2;
  }

  /** Pressure just above a level, kPa. */
  public double justAbove(double level) {
    for (int i = 0; i + 1 < points.size(); i++) {
      Point a = points.get(i);
      Point b = points.get(i + 1);
      if (level < a.level() && level >= b.level()) {
        return between(a, b, level);
      }
    }
    return 0;
  }

  /** Pressure just below a level, kPa. */
  public double justBelow(double level) {
    for (int i = 0; i + 1 < points.size(); i++) {
      Point a = points.get(i);
      Point b = points.get(i + 1);
      if (level <= a.level() && level > b.level()) {
        return between(a, b, level);
      }
    }
    return 0;
  }

  private static double between(Point a, Point b, double level) {
    double t = (a.level() - level) / (a.level() - b.level());
    return a.pressure() + t * (b.pressure() - a.pressure());
  }

  /** Resultant, kN per metre of wall. */
  public double force() {
    double sum = 0;
    for (int i = 0; i + 1 < points.size(); i++) {
      Point a = points.get(i);
      Point b = points.get(i + 1);
      sum += (a.level() - b.level()) * (a.pressure() + b.pressure()) / 2;
    }
    return sum;
  }
}
