package pilefolio.submittal.figure;

import java.util.List;

/**
 * A named curve.
 *
 * @param name what it shows, for the key
 * @param role how it is drawn
 * @param points points in order
 */
public record Curve(String name, Role role, List<Point> points) {

  /** What a curve is to its figure. */
  public enum Role {
    /** What the figure is about. */
    MAIN,
    /** A second result beside it. */
    SECOND,
    /** A third result. */
    THIRD,
    /** A limit to keep. */
    LIMIT,
    /** Water. */
    WATER
  }

  /**
   * A point.
   *
   * @param x value along the horizontal scale
   * @param y value along the vertical scale
   */
  public record Point(double x, double y) {}

  /** Copies the points. */
  public Curve {
    points = List.copyOf(points);
  }
}
