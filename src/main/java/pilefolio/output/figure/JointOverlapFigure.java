package pilefolio.output.figure;

import java.util.ArrayList;
import java.util.List;
import pilefolio.submittal.figure.Curve;
import pilefolio.submittal.figure.JointOverlapData;
import pilefolio.submittal.figure.Mark;

/** Overlap left with depth: the cone of the tolerance, the limit, the depths that count. */
public final class JointOverlapFigure implements Figure {
  private static final double TOP = 3;
  private static final double LEFT = 16;

  private final JointOverlapData data;

  /** Draws the values given. */
  public JointOverlapFigure(JointOverlapData data) {
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
    return 100;
  }

  @Override
  public String caption() {
    return data.caption();
  }

  @Override
  public void draw(Canvas canvas) {
    List<Curve> curves = List.of(data.deterministic(), data.rootSumSquare());
    Range overlap = new Range().add(0).add(data.asSetOut()).add(data.required()).addX(curves);
    Range depth = new Range().add(0).addY(curves);
    data.depths().forEach(mark -> depth.add(mark.at()));
    Axis across = Axis.rounded(data.overlapTitle(), overlap.low(), overlap.high() * 1.02, 8);
    Axis down = Axis.between(data.depthTitle(), depth.low(), depth.high(), 8).reverse();
    List<Mark> marks = new ArrayList<>(data.depths());
    if (!data.contactLost().isEmpty()) {
      marks.add(new Mark(data.contactLostDepth(), data.contactLost()));
    }
    double right = widthMm() - LevelLabels.width(canvas, marks) - 1;
    PlotFrame frame = new PlotFrame(LEFT, TOP, right - LEFT, heightMm() - TOP - 21, across, down);
    if (overlap.low() < 0) {
      frame.area(
          canvas,
          Palette.WARNING.tint(0.1),
          across.low(),
          down.low(),
          0,
          down.low(),
          0,
          down.high(),
          across.low(),
          down.high());
    }
    frame.area(canvas, Palette.ACCENT_TINT, cone());
    frame.grid(canvas);
    data.depths().forEach(mark -> frame.level(canvas, Pen.FINE.dashed(1.4, 0.9), mark.at()));
    frame.upright(canvas, Pen.of(Palette.INK, 0.35), 0);
    frame.upright(canvas, Pen.MEDIUM.with(Palette.GREY), data.asSetOut());
    frame.upright(canvas, CurveStyle.pen(Curve.Role.LIMIT), data.required());
    for (Curve curve : curves) {
      if (!curve.points().isEmpty()) {
        frame.curve(canvas, CurveStyle.pen(curve.role()), CurveStyle.values(curve));
      }
    }
    if (!data.contactLost().isEmpty()) {
      canvas.circle(null, Palette.WARNING, frame.x(0), frame.y(data.contactLostDepth()), 0.8);
    }
    frame.axes(canvas);
    if (overlap.low() < 0) {
      canvas.text(
          frame.x(0) - 1.5,
          frame.bottom() - 2,
          "joint open",
          Lettering.SMALL.in(Palette.WARNING).end());
    }
    LevelLabels.draw(canvas, frame.right(), TOP + 1, frame.bottom() - 1, marks, frame::y);
    Key.inRows(canvas, LEFT, frame.bottom() + 10, widthMm() - LEFT, key(curves));
  }

  private double[] cone() {
    List<Curve.Point> points = data.deterministic().points();
    double[] cone = new double[points.size() * 2 + 4];
    for (int i = 0; i < points.size(); i++) {
      cone[2 * i] = points.get(i).x();
      cone[2 * i + 1] = points.get(i).y();
    }
    int n = points.size() * 2;
    cone[n] = data.asSetOut();
    cone[n + 1] = points.get(points.size() - 1).y();
    cone[n + 2] = data.asSetOut();
    cone[n + 3] = points.get(0).y();
    return cone;
  }

  private List<Key.Entry> key(List<Curve> curves) {
    List<Key.Entry> entries = new ArrayList<>();
    entries.add(Key.Entry.line("as set out", Pen.MEDIUM.with(Palette.GREY)));
    for (Curve curve : curves) {
      if (!curve.points().isEmpty()) {
        entries.add(Key.Entry.line(curve.name(), CurveStyle.pen(curve.role())));
      }
    }
    entries.add(Key.Entry.line(data.requiredLabel(), CurveStyle.pen(Curve.Role.LIMIT)));
    entries.add(Key.Entry.fill("taken up by tolerances", Palette.ACCENT_TINT));
    return entries;
  }
}
