package pilefolio.output.figure;

import java.util.List;

/**
 * A plot with two scales: turns values into places on the paper and draws grid, frame, ticks and
 * titles.
 */
public final class PlotFrame {
  private static final double TICK = 1.0;

  private final double left;
  private final double top;
  private final double width;
  private final double height;
  private final Axis across;
  private final Axis upward;

  /**
   * A plot.
   *
   * @param left left edge of the plotting area in mm
   * @param top upper edge in mm
   * @param width width in mm
   * @param height height in mm
   * @param across scale from left to right
   * @param upward scale from bottom to top; a reversed one grows downwards
   */
  public PlotFrame(double left, double top, double width, double height, Axis across, Axis upward) {
    this.left = left;
    this.top = top;
    this.width = width;
    this.height = height;
    this.across = across;
    this.upward = upward;
  }

  /** Left edge in mm. */
  public double left() {
    return left;
  }

  /** Right edge in mm. */
  public double right() {
    return left + width;
  }

  /** Upper edge in mm. */
  public double top() {
    return top;
  }

  /** Lower edge in mm. */
  public double bottom() {
    return top + height;
  }

  /** Place of a value along the horizontal scale, in mm. */
  public double x(double value) {
    return left + across.share(value) * width;
  }

  /** Place of a value along the vertical scale, in mm. */
  public double y(double value) {
    return top + (1 - upward.share(value)) * height;
  }

  /** Draws fine lines at all ticks. */
  public void grid(Canvas canvas) {
    for (Axis.Tick tick : across.ticks()) {
      canvas.line(Pen.GRID, x(tick.value()), top, x(tick.value()), bottom());
    }
    for (Axis.Tick tick : upward.ticks()) {
      canvas.line(Pen.GRID, left, y(tick.value()), right(), y(tick.value()));
    }
  }

  /** Draws the frame, ticks and labels below and at the left, and both titles. */
  public void axes(Canvas canvas) {
    frame(canvas);
    labelBelow(canvas);
    labelLeft(canvas);
  }

  /** Draws the frame alone. */
  public void frame(Canvas canvas) {
    canvas.rectangle(Pen.MEDIUM.with(Palette.GREY), null, left, top, width, height);
  }

  /** Draws the horizontal scale below the frame; labels that would touch are left out. */
  public void labelBelow(Canvas canvas) {
    Lettering lettering = Lettering.SMALL.middle().below();
    double free = -Double.MAX_VALUE;
    List<Axis.Tick> ticks =
        across.reversed()
            ? across.ticks().stream()
                .sorted((a, b) -> Double.compare(b.value(), a.value()))
                .toList()
            : across.ticks();
    for (Axis.Tick tick : ticks) {
      double at = x(tick.value());
      canvas.line(Pen.FINE, at, bottom(), at, bottom() + TICK);
      double half = canvas.textWidth(tick.label(), lettering) / 2;
      if (at - half > free) {
        canvas.text(at, bottom() + TICK + 0.7, tick.label(), lettering);
        free = at + half + 1;
      }
    }
    canvas.text(
        left + width / 2, bottom() + TICK + 4.2, across.title(), Lettering.SMALL.middle().below());
  }

  /** Draws the vertical scale at the left of the frame; labels that would touch are left out. */
  public void labelLeft(Canvas canvas) {
    Lettering lettering = Lettering.SMALL.end().centred();
    double widest = 0;
    double last = Double.MAX_VALUE;
    for (Axis.Tick tick : upward.ticks()) {
      double at = y(tick.value());
      canvas.line(Pen.FINE, left - TICK, at, left, at);
      if (Math.abs(at - last) >= lettering.lineMm()) {
        canvas.text(left - TICK - 0.7, at, tick.label(), lettering);
        widest = Math.max(widest, canvas.textWidth(tick.label(), lettering));
        last = at;
      }
    }
    canvas.text(
        left - TICK - widest - 2.2,
        top + height / 2,
        upward.title(),
        Lettering.SMALL.middle().turned(90));
  }

  /** Draws a curve through values x, y, x, y, ..., cut off at the frame. */
  public void curve(Canvas canvas, Pen pen, double... values) {
    canvas.clipped(corners(), () -> canvas.polyline(pen, places(values)));
  }

  /** Fills an area given by values x, y, x, y, ..., cut off at the frame. */
  public void area(Canvas canvas, Ink fill, double... values) {
    canvas.clipped(corners(), () -> canvas.polygon(null, fill, places(values)));
  }

  /** Draws a line across the frame at a value of the vertical scale. */
  public void level(Canvas canvas, Pen pen, double value) {
    canvas.line(pen, left, y(value), right(), y(value));
  }

  /** Draws a line down the frame at a value of the horizontal scale. */
  public void upright(Canvas canvas, Pen pen, double value) {
    canvas.line(pen, x(value), top, x(value), bottom());
  }

  /** Corners of the frame as a polygon in mm. */
  public double[] corners() {
    return new double[] {left, top, right(), top, right(), bottom(), left, bottom()};
  }

  private double[] places(double... values) {
    double[] places = new double[values.length];
    for (int i = 0; i < values.length; i += 2) {
      places[i] = x(values[i]);
      places[i + 1] = y(values[i + 1]);
    }
    return places;
  }
}
