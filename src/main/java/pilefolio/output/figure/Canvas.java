package pilefolio.output.figure;

import java.util.List;

/**
 * A sheet to draw on. Lengths are mm on paper, the origin is the top left corner, y points down.
 * Polygons and polylines are given as x, y, x, y, ... Nothing is rasterised and text stays text.
 */
public interface Canvas {
  /** Width of the sheet in mm. */
  double widthMm();

  /** Height of the sheet in mm. */
  double heightMm();

  /** Draws a line through the points. */
  void polyline(Pen pen, double... xy);

  /** Draws a closed polygon; a null pen or a null fill leaves that part out. */
  void polygon(Pen pen, Ink fill, double... xy);

  /** Draws a circle; a null pen or a null fill leaves that part out. */
  void circle(Pen pen, Ink fill, double x, double y, double radius);

  /**
   * Draws part of a circle.
   *
   * @param startDegrees start, anticlockwise from the direction of x
   * @param sweepDegrees length, positive anticlockwise
   */
  void arc(Pen pen, double x, double y, double radius, double startDegrees, double sweepDegrees);

  /** Sets a label in the markup of {@link Label}; its point lies where the lettering says. */
  void text(double x, double y, String markup, Lettering lettering);

  /** Width of a label in mm. */
  double textWidth(String markup, Lettering lettering);

  /** Runs the drawing with everything outside the polygon cut off. */
  void clipped(double[] xy, Runnable drawing);

  /** Draws one line. */
  default void line(Pen pen, double x1, double y1, double x2, double y2) {
    polyline(pen, x1, y1, x2, y2);
  }

  /** Draws a rectangle; a null pen or a null fill leaves that part out. */
  default void rectangle(Pen pen, Ink fill, double x, double y, double width, double height) {
    polygon(pen, fill, x, y, x + width, y, x + width, y + height, x, y + height);
  }

  /**
   * Fills a polygon with a hatch made of single lines and dots.
   *
   * @param spacing distance between its lines in mm
   */
  default void hatch(Hatch kind, double spacing, Pen pen, double... xy) {
    kind.draw(this, pen, spacing, xy);
  }

  /** Draws a line with a filled head at its end. */
  default void arrow(Pen pen, double x1, double y1, double x2, double y2) {
    arrow(pen, x1, y1, x2, y2, 1.6);
  }

  /**
   * Draws a line with a filled head at its end.
   *
   * @param head length of the head in mm
   */
  default void arrow(Pen pen, double x1, double y1, double x2, double y2, double head) {
    double length = Math.hypot(x2 - x1, y2 - y1);
    if (length == 0) {
      return;
    }
    double ux = (x2 - x1) / length;
    double uy = (y2 - y1) / length;
    double bx = x2 - ux * head;
    double by = y2 - uy * head;
    double half = head * 0.28;
    if (length > head) {
      line(pen, x1, y1, bx, by);
    }
    polygon(
        null, pen.ink(), x2, y2, bx - uy * half, by + ux * half, bx + uy * half, by - ux * half);
  }

  /**
   * Draws a dimension: extension lines, a line between two oblique ticks, and the label over it.
   * The label is moved beyond the second end when it is longer than the dimension.
   *
   * @param offset distance of the dimension line from the two points, in mm, to the left of the
   *     direction from the first to the second
   */
  default void dimension(double x1, double y1, double x2, double y2, double offset, String markup) {
    double length = Math.hypot(x2 - x1, y2 - y1);
    if (length == 0) {
      return;
    }
    double ux = (x2 - x1) / length;
    double uy = (y2 - y1) / length;
    double nx = uy;
    double ny = -ux;
    double ax = x1 + nx * offset;
    double ay = y1 + ny * offset;
    double bx = x2 + nx * offset;
    double by = y2 + ny * offset;
    Pen pen = Pen.FINE;
    double sign = Math.signum(offset);
    double start = Math.min(Math.abs(offset), 0.8) * sign;
    double over = 0.8 * sign;
    for (double[] end : List.of(new double[] {x1, y1}, new double[] {x2, y2})) {
      line(
          pen,
          end[0] + nx * start,
          end[1] + ny * start,
          end[0] + nx * (offset + over),
          end[1] + ny * (offset + over));
    }
    line(pen, ax, ay, bx, by);
    Pen tick = Pen.of(Palette.INK, 0.25);
    double tx = (ux + nx) * 0.6;
    double ty = (uy + ny) * 0.6;
    line(tick, ax - tx, ay - ty, ax + tx, ay + ty);
    line(tick, bx - tx, by - ty, bx + tx, by + ty);
    Lettering lettering = Lettering.SMALL;
    double degrees = Math.toDegrees(Math.atan2(-uy, ux));
    double upright = degrees > 90.01 || degrees <= -89.99 ? degrees + 180 : degrees;
    double radians = Math.toRadians(upright);
    double upX = -Math.sin(radians);
    double upY = -Math.cos(radians);
    double width = textWidth(markup, lettering);
    double mx = (ax + bx) / 2;
    double my = (ay + by) / 2;
    if (width > length - 1) {
      mx = bx + ux * (width / 2 + 1.2);
      my = by + uy * (width / 2 + 1.2);
    }
    text(mx + upX * 0.6, my + upY * 0.6, markup, lettering.middle().turned(upright));
  }

  /**
   * Sets lines of text below each other, the first one at the point given.
   *
   * @return y of the base line that would follow
   */
  default double lines(double x, double y, List<String> markups, Lettering lettering) {
    double at = y;
    for (String markup : markups) {
      text(x, at, markup, lettering);
      at += lettering.lineMm();
    }
    return at;
  }
}
