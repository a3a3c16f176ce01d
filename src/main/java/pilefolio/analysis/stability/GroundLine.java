package pilefolio.analysis.stability;

import java.util.List;
import pilefolio.analysis.earth.OutsideRange;

/**
 * The surface of the ground from the excavation to the retained side; a vertical face is two points
 * one above the other.
 *
 * @param points x never falls from point to point; level before the first and after the last
 */
public record GroundLine(List<Point> points) {

  /**
   * A point of the surface.
   *
   * @param x distance, m
   * @param level level, m
   */
  public record Point(double x, double level) {}

  public GroundLine {
    points = List.copyOf(points);
    if (points.isEmpty()) {
      throw new OutsideRange("a surface needs a point");
    }
    for (int i = 1; i < points.size(); i++) {
      if (points.get(i).x() < points.get(i - 1).x()) {
        throw new OutsideRange("points of a surface stand in the order of x");
      }
    }
  }

  /** A vertical face at x = 0 between two levels. */
  public static GroundLine step(double front, double behind) {
    return new GroundLine(List.of(new Point(0, front), new Point(0, behind)));
  }

  /** Level just beyond x on the side of small x, m. */
  public double before(double x) {
    int i = 0;
    while (i < points.size() && points.get(i).x() < x) {
      i++;
    }
    return between(i, x);
  }

  /** Level just beyond x on the side of large x, m. */
  public double after(double x) {
    int i = 0;
    while (i < points.size() && points.get(i).x() <= x) {
      i++;
    }
    return between(i, x);
  }

  private double between(int next, double x) {
    if (next == 0) {
      return points.get(0).level();
    }
    Point left = points.get(next - 1);
    if (next == points.size()) {
      return left.level();
    }
    Point right = points.get(next);
    return left.level() + (right.level() - left.level()) * (x - left.x()) / (right.x() - left.x());
  }
}
