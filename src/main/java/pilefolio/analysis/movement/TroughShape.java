package pilefolio.analysis.movement;

import java.util.Arrays;
import java.util.List;

/**
 * Published shapes of the settlement of the ground behind a wall, as a share of the greatest
 * settlement over the distance from the wall in retained heights.
 *
 * <p>All are envelopes or typical forms of records of finished excavations; none knows the wall.
 */
public enum TroughShape {
  /** Sand: straight from the wall to 2 H. Clough and O'Rourke (1990); UFC 3-220-20, Eq. 2-5. */
  SAND_TRIANGLE(List.of(), new double[] {0, 1}, new double[] {2, 0}),
  /** Stiff to hard clay: straight from the wall to 3 H. Clough and O'Rourke (1990). */
  STIFF_CLAY_TRIANGLE(List.of(), new double[] {0, 1}, new double[] {3, 0}),
  /** Soft to medium clay: level to 0.75 H, straight to zero at 2 H. Clough and O'Rourke (1990). */
  SOFT_CLAY_TO_2H(List.of(1.375), new double[] {0, 1}, new double[] {0.75, 1}, new double[] {2, 0}),
  /** Soft clay: level to 0.75 H, straight to zero at 1.5 H. UFC 3-220-20, Eq. 2-6. */
  SOFT_CLAY_TO_1_5H(
      List.of(1.125), new double[] {0, 1}, new double[] {0.75, 1}, new double[] {1.5, 0}),
  /** Half at the wall, greatest at H/2, a tenth at 2 H, zero at 4 H. Hsieh and Ou (1998). */
  CONCAVE(
      List.of(1.25),
      new double[] {0, 0.5},
      new double[] {0.5, 1},
      new double[] {2, 0.1},
      new double[] {4, 0}),
  /** Falls with the root of the distance to zero at 4 H. Hsieh and Ou (1998). */
  SPANDREL(List.of()) {
    @Override
    public double fraction(double ratio) {
      double r = Math.abs(ratio);
      if (r <= 2) {
        return 1 - 0.636 * Math.sqrt(r);
      }
      return r < 4 ? 0.342 - 0.171 * Math.sqrt(r) : 0;
    }

    @Override
    public double steepestBeyond(double ratio) {
      double r = Math.abs(ratio);
      return r < 4 ? (r <= 2 ? 0.636 : 0.171) / (2 * Math.sqrt(r)) : 0;
    }

    @Override
    public double reach() {
      return 4;
    }

    @Override
    public double area() {
      double primary = 2 - 0.636 * 2 / 3 * Math.pow(2, 1.5);
      double secondary = 0.342 * 2 - 0.171 * 2 / 3 * (8 - Math.pow(2, 1.5));
      return primary + secondary;
    }

    @Override
    public List<Double> bends() {
      return List.of(0.0, 2.0, 4.0);
    }
  };

  private final List<Double> inflections;
  private final double[][] points;

  TroughShape(List<Double> inflections, double[]... points) {
    this.inflections = inflections;
    this.points = points;
  }

  /**
   * Share of the greatest settlement.
   *
   * @param ratio distance from the wall over the retained height, zero or more
   * @return the share, 0 to 1; 0 beyond the reach
   */
  public double fraction(double ratio) {
    for (int i = 1; i < points.length; i++) {
      double[] a = points[i - 1];
      double[] b = points[i];
      if (ratio <= b[0]) {
        return a[1] + (b[1] - a[1]) * (ratio - a[0]) / (b[0] - a[0]);
      }
    }
    return 0;
  }

  /**
   * Share of the greatest horizontal movement of the ground: that of the settlement, but not less
   * than that of ground farther from the wall. Ground between the wall and the deepest point of the
   * trough is taken to move as one, so that no compression is credited.
   *
   * @param ratio distance from the wall over the retained height, zero or more
   * @return the share, 0 to 1
   */
  public double horizontalFraction(double ratio) {
    return ratio < peak() ? 1 : fraction(ratio);
  }

  /**
   * Steepest slope of the shape at a distance or farther, as a share of (greatest settlement over
   * retained height); infinite for a root at the wall itself.
   *
   * @param ratio distance from the wall over the retained height, zero or more
   */
  public double steepestBeyond(double ratio) {
    double most = 0;
    for (int i = 1; i < points.length; i++) {
      double[] a = points[i - 1];
      double[] b = points[i];
      if (ratio < b[0]) {
        most = Math.max(most, Math.abs(b[1] - a[1]) / (b[0] - a[0]));
      }
    }
    return most;
  }

  /** Distance of the greatest settlement from the wall, in retained heights. */
  public double peak() {
    return this == CONCAVE ? 0.5 : 0;
  }

  /** Distance at which the settlement ends, in retained heights. */
  public double reach() {
    return points[points.length - 1][0];
  }

  /** Area under the shape: volume of the trough over (greatest settlement × retained height). */
  public double area() {
    double sum = 0;
    for (int i = 1; i < points.length; i++) {
      sum += (points[i][0] - points[i - 1][0]) * (points[i][1] + points[i - 1][1]) / 2;
    }
    return sum;
  }

  /** Distances at which the shape has a corner, in retained heights, from 0 to the reach. */
  public List<Double> bends() {
    return Arrays.stream(points).map(p -> p[0]).toList();
  }

  /**
   * Distances that part ground bent like a bowl (sagging) from ground bent like a hill (hogging),
   * in retained heights. A straight stretch between the two is parted at its middle.
   */
  public List<Double> inflections() {
    return inflections;
  }

  /** True if ground at a distance is bent like a bowl, or is straight between the bends. */
  public boolean sagging(double ratio) {
    return !inflections.isEmpty() && ratio < inflections.get(0);
  }
}
