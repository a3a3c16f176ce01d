package pilefolio.output.figure;

import java.util.ArrayList;
import java.util.List;
import pilefolio.submittal.figure.Curve;
import pilefolio.submittal.figure.DepthPlotData;

/** Panels side by side on one vertical scale. */
public final class DepthPlotFigure implements Figure {
  private static final double TOP = 7;
  private static final double LEFT = 16;
  private static final double PANEL_GAP = 6;
  private static final double FOOT = 16;

  private final DepthPlotData data;

  /** Draws the values given. */
  public DepthPlotFigure(DepthPlotData data) {
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
    return 112;
  }

  @Override
  public String caption() {
    return data.caption();
  }

  @Override
  public void draw(Canvas canvas) {
    Range range = new Range();
    data.panels().forEach(panel -> range.addY(panel.curves()));
    data.marks().forEach(mark -> range.add(mark.at()));
    Axis vertical = Axis.between(data.verticalTitle(), range.low(), range.high(), 8);
    if (data.depths()) {
      vertical = vertical.reverse();
    }
    double right = widthMm() - LevelLabels.width(canvas, data.marks()) - 1;
    int n = data.panels().size();
    double width = (right - LEFT - PANEL_GAP * (n - 1)) / n;
    double height = heightMm() - TOP - FOOT - keyRows() * 3.6;
    PlotFrame frame = null;
    for (int i = 0; i < n; i++) {
      frame = panel(canvas, i, LEFT + i * (width + PANEL_GAP), width, height, vertical);
      if (i == 0) {
        frame.labelLeft(canvas);
      }
    }
    if (frame != null) {
      LevelLabels.draw(canvas, frame.right(), TOP + 1, frame.bottom() - 1, data.marks(), frame::y);
      Key.inRows(canvas, LEFT, frame.bottom() + 9.5, widthMm() - LEFT, key());
    }
  }

  private PlotFrame panel(
      Canvas canvas, int index, double left, double width, double height, Axis vertical) {
    DepthPlotData.Panel panel = data.panels().get(index);
    Range values = new Range().add(0).addX(panel.curves());
    panel.extremes().forEach(extreme -> values.add(extreme.x()));
    Axis across = Axis.rounded(panel.title(), values.low(), values.high(), 4);
    PlotFrame frame = new PlotFrame(left, TOP, width, height, across, vertical);
    frame.grid(canvas);
    for (Curve curve : panel.curves()) {
      if (curve.role() == Curve.Role.MAIN && !curve.points().isEmpty()) {
        frame.area(canvas, Palette.ACCENT_TINT, closed(curve));
      }
    }
    data.marks().forEach(mark -> frame.level(canvas, Pen.FINE.dashed(1.4, 0.9), mark.at()));
    frame.upright(canvas, Pen.MEDIUM.with(Palette.GREY), 0);
    panel
        .curves()
        .forEach(
            curve -> frame.curve(canvas, CurveStyle.pen(curve.role()), CurveStyle.values(curve)));
    frame.frame(canvas);
    frame.labelBelow(canvas);
    extremes(canvas, frame, panel.extremes());
    return frame;
  }

  /** The curve with its ends joined along the zero line. */
  private static double[] closed(Curve curve) {
    double[] xy = CurveStyle.values(curve);
    double[] closed = new double[xy.length + 4];
    System.arraycopy(xy, 0, closed, 2, xy.length);
    closed[1] = xy[1];
    closed[closed.length - 1] = xy[xy.length - 1];
    return closed;
  }

  private static void extremes(
      Canvas canvas, PlotFrame frame, List<DepthPlotData.Extreme> extremes) {
    Lettering lettering = Lettering.SMALL.bold().centred();
    List<Double> wanted = extremes.stream().map(e -> frame.y(e.y())).toList();
    List<Double> placed =
        Spread.apart(wanted, lettering.lineMm() * 1.1, frame.top() + 1.8, frame.bottom() - 1.8);
    for (int i = 0; i < extremes.size(); i++) {
      DepthPlotData.Extreme extreme = extremes.get(i);
      double x = frame.x(extreme.x());
      canvas.circle(null, Palette.ACCENT, x, wanted.get(i), 0.6);
      double length = canvas.textWidth(extreme.label(), lettering);
      boolean toRight = x + 1.5 + length < frame.right();
      double at = toRight ? x + 1.5 : Math.max(frame.left() + 0.8 + length, x - 1.5);
      double from = toRight ? at : at - length;
      double half = lettering.capHeightMm() / 2 + 0.5;
      canvas.rectangle(
          null, Palette.WHITE, from - 0.4, placed.get(i) - half, length + 0.8, 2 * half);
      canvas.text(at, placed.get(i), extreme.label(), toRight ? lettering : lettering.end());
    }
  }

  private List<Key.Entry> key() {
    List<Key.Entry> entries = new ArrayList<>();
    List<String> names = new ArrayList<>();
    for (DepthPlotData.Panel panel : data.panels()) {
      for (Curve curve : panel.curves()) {
        String entry = curve.role() + curve.name();
        if (!curve.name().isEmpty() && !names.contains(entry)) {
          names.add(entry);
          entries.add(Key.Entry.line(curve.name(), CurveStyle.pen(curve.role())));
        }
      }
    }
    return entries;
  }

  private int keyRows() {
    int letters = key().stream().mapToInt(entry -> entry.name().length() + 14).sum();
    return Math.max(0, letters / 115);
  }
}
