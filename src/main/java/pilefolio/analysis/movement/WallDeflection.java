package pilefolio.analysis.movement;

import java.util.List;

/**
 * The deflected wall in one stage.
 *
 * @param points levels and displacements from the top down, at least two
 */
public record WallDeflection(List<Point> points) {

  /**
   * A place on the wall.
   *
   * @param level elevation, m
   * @param displacement toward the excavation, m
   */
  public record Point(double level, double displacement) {}

  /**
   * Checks the order.
   *
   * @throws IllegalArgumentException if there are fewer than two points or levels rise
   */
  public WallDeflection {
    points = List.copyOf(points);
    if (points.size() < 2) {
      throw new IllegalArgumentException("a deflected wall needs two points");
    }
    for (int i = 1; i < points.size(); i++) {
      if (!(points.get(i).level() <= points.get(i - 1).level())) {
        throw new IllegalArgumentException("points of a wall are given from the top down");
      }
    }
  }

  /** Greatest displacement toward the excavation, m; zero if the wall moves only backward. */
  public double greatest() {
    return points.stream().mapToDouble(Point::displacement).max().orElseThrow() < 0
        ? 0
        : points.stream().mapToDouble(Point::displacement).max().orElseThrow();
  }

  /** Level of the greatest displacement toward the excavation, m; the highest if several. */
  public double levelOfGreatest() {
    Point best = points.get(0);
    for (Point p : points) {
      if (p.displacement() > best.displacement()) {
        best = p;
      }
    }
    return best.level();
  }

  /** Area between the straight and the deflected wall, m³ for one metre of wall. */
  public double volume() {
    double sum = 0;
    for (int i = 1; i < points.size(); i++) {
      Point a = points.get(i - 1);
      Point b = points.get(i);
      sum += (a.level() - b.level()) * (a.displacement() + b.displacement()) / 2;
    }
    return sum;
  }
}
