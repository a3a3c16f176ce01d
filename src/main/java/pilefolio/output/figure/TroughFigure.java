package pilefolio.output.figure;

import java.util.ArrayList;
import java.util.List;
import pilefolio.submittal.figure.Curve;
import pilefolio.submittal.figure.TroughData;
import pilefolio.submittal.figure.TroughData.Beside;

/** The ground behind a wall: above it what stands there, below it how far it settles. */
public final class TroughFigure implements Figure {
  private static final double TOP = 2;
  private static final double LEFT = 18;
  private static final double ROW = 3.4;
  private static final double HOUSE = 7;
  private static final double ROOF = 2.6;
  private static final double PLOT = 46;
  private static final double WALL = 1.6;
  private static final double FOOT = 16;
  private static final double LEAST_WIDTH = 1.2;

  private final TroughData data;

  /** Draws the values given. */
  public TroughFigure(TroughData data) {
    this.data = data;
  }

  @Override
  public String id() {
    return data.id();
  }

  @Override
  public double widthMm() {
    return 168;
  }

  @Override
  public double heightMm() {
    return ground() + PLOT + FOOT;
  }

  @Override
  public String caption() {
    return data.caption();
  }

  private double ground() {
    return TOP + data.neighbours().size() * ROW + 2 + ROOF + HOUSE;
  }

  @Override
  public void draw(Canvas canvas) {
    Range range = new Range().add(0).addY(data.curves());
    data.neighbours().forEach(b -> range.add(b.settlement()));
    double deepest = range.high() > 0 ? range.high() * 1.05 : 1;
    Axis down = Axis.rounded(data.settlementTitle(), 0, deepest, 6).reverse();
    Axis across = Axis.between(data.distanceTitle(), 0, data.far(), 10);
    PlotFrame frame = new PlotFrame(LEFT, ground(), widthMm() - LEFT - 3, PLOT, across, down);
    for (Curve curve : data.curves()) {
      if (curve.role() == Curve.Role.MAIN) {
        frame.area(canvas, Palette.ACCENT_TINT, underGround(curve));
      }
    }
    frame.grid(canvas);
    data.curves().forEach(c -> frame.curve(canvas, CurveStyle.pen(c.role()), CurveStyle.values(c)));
    frame.axes(canvas);
    scene(canvas, frame);
    List<Key.Entry> entries = new ArrayList<>();
    data.curves().forEach(c -> entries.add(Key.Entry.line(c.name(), CurveStyle.pen(c.role()))));
    Key.inRows(canvas, LEFT, frame.bottom() + 9.5, widthMm() - LEFT, entries);
  }

  private void scene(Canvas canvas, PlotFrame frame) {
    double y = ground();
    canvas.line(Pen.BOLD, frame.left(), y, frame.right(), y);
    canvas.rectangle(
        Pen.MEDIUM, Palette.LIGHT_GREY, frame.left() - WALL, y - 1.5, WALL, PLOT + 1.5);
    canvas.text(
        frame.left() - WALL - 1, y - 2, "wall", Lettering.SMALL.in(Palette.GREY).end().above());
    for (int i = 0; i < data.neighbours().size(); i++) {
      Beside b = data.neighbours().get(i);
      object(canvas, frame, b);
      label(canvas, frame, b, TOP + ROW * (i + 1));
    }
  }

  private void object(Canvas canvas, PlotFrame frame, Beside b) {
    double y = ground();
    double left = frame.x(b.near());
    double right = Math.max(frame.x(b.far()), left + LEAST_WIDTH);
    if (b.building()) {
      canvas.polygon(
          Pen.MEDIUM,
          Palette.PAPER,
          left,
          y,
          left,
          y - HOUSE,
          (left + right) / 2,
          y - HOUSE - ROOF,
          right,
          y - HOUSE,
          right,
          y);
    } else {
      canvas.rectangle(Pen.MEDIUM, Palette.PAPER, left, y - 1.2, right - left, 1.2);
    }
    canvas.circle(null, Palette.WARNING, frame.x(b.place()), frame.y(b.settlement()), 0.8);
  }

  private void label(Canvas canvas, PlotFrame frame, Beside b, double base) {
    double left = frame.x(b.near());
    double right = Math.max(frame.x(b.far()), left + LEAST_WIDTH);
    double middle = (left + right) / 2;
    double foot = ground() - (b.building() ? HOUSE + ROOF : 1.2);
    Lettering lettering = Lettering.SMALL;
    double length = canvas.textWidth(b.label(), lettering);
    canvas.line(Pen.FINE, middle, base + 0.6, middle, foot);
    boolean toRight = middle + 1 + length < frame.right();
    canvas.text(
        toRight ? middle + 1 : frame.right(),
        base,
        b.label(),
        toRight ? lettering : lettering.end());
  }

  /** The curve with its ends joined along the ground. */
  private static double[] underGround(Curve curve) {
    double[] xy = CurveStyle.values(curve);
    double[] closed = new double[xy.length + 4];
    System.arraycopy(xy, 0, closed, 2, xy.length);
    closed[0] = xy[0];
    closed[closed.length - 2] = xy[xy.length - 2];
    return closed;
  }
}
