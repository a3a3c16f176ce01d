package pilefolio.submittal.figure;

import java.util.List;
import java.util.OptionalDouble;

/**
 * The piles of one run of wall seen from above, with their drilling order.
 *
 * @param id name of the figure in the document
 * @param caption one sentence
 * @param unit unit of all lengths, such as m
 * @param piles piles in order along the wall
 * @param outlines other lines of the plan: neighbouring houses, boundaries
 * @param northDegrees direction of north, anticlockwise from the x axis; empty when not known
 */
public record SitePlanData(
    String id,
    String caption,
    String unit,
    List<PlanPile> piles,
    List<Outline> outlines,
    OptionalDouble northDegrees) {

  /**
   * A pile.
   *
   * @param mark its mark
   * @param secondary true for a secondary, which cuts its neighbours
   * @param x position, to the right
   * @param y position, upwards on the plan
   * @param along position along the wall from its start
   * @param diameter diameter
   * @param beam whether a steel beam stands in it
   * @param order number in the drilling order, from 1; 0 when not planned
   */
  public record PlanPile(
      String mark,
      boolean secondary,
      double x,
      double y,
      double along,
      double diameter,
      boolean beam,
      int order) {}

  /**
   * A line of the plan.
   *
   * @param label its name; may be empty
   * @param points corners, x to the right and y upwards
   */
  public record Outline(String label, List<Curve.Point> points) {
    /** Copies the points. */
    public Outline {
      points = List.copyOf(points);
    }
  }

  /** Copies the lists. */
  public SitePlanData {
    piles = List.copyOf(piles);
    outlines = List.copyOf(outlines);
  }
}
