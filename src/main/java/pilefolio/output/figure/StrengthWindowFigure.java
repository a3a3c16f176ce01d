package pilefolio.output.figure;

import java.util.ArrayList;
import java.util.List;
import pilefolio.submittal.figure.Curve;
import pilefolio.submittal.figure.Mark;
import pilefolio.submittal.figure.StrengthWindowData;

/** Strength with age, the limits between which a neighbour may be drilled, and the ages planned. */
public final class StrengthWindowFigure implements Figure {
  private static final double LEFT = 16;

  private final StrengthWindowData data;

  /** Draws the values given. */
  public StrengthWindowFigure(StrengthWindowData data) {
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
    return 92;
  }

  @Override
  public String caption() {
    return data.caption();
  }

  @Override
  public void draw(Canvas canvas) {
    Range age = new Range().add(0).addX(data.growth());
    data.planned().forEach(mark -> age.add(mark.at()));
    Range strength = new Range().add(0).addY(data.growth()).add(data.least());
    if (data.greatest() > 0) {
      strength.add(data.greatest());
    }
    Axis across = Axis.between(data.ageTitle(), age.low(), age.high(), 10);
    Axis upward = Axis.rounded(data.strengthTitle(), 0, strength.high() * 1.04, 6);
    List<Mark> limits = limits();
    double right = widthMm() - LevelLabels.width(canvas, limits) - 1;
    double top = 9;
    PlotFrame frame = new PlotFrame(LEFT, top, right - LEFT, heightMm() - top - 19, across, upward);
    if (data.window().size() == 2) {
      double from = Math.max(across.low(), data.window().get(0));
      double to = Math.min(across.high(), data.window().get(1));
      frame.area(
          canvas, Palette.ACCENT_TINT, from, 0, to, 0, to, upward.high(), from, upward.high());
    }
    frame.grid(canvas);
    limits.forEach(mark -> frame.level(canvas, CurveStyle.pen(Curve.Role.LIMIT), mark.at()));
    for (Curve curve : data.growth()) {
      frame.curve(canvas, CurveStyle.pen(curve.role()), CurveStyle.values(curve));
    }
    planned(canvas, frame);
    frame.axes(canvas);
    LevelLabels.draw(canvas, frame.right(), top + 1, frame.bottom() - 1, limits, frame::y);
    Key.inRows(canvas, LEFT, frame.bottom() + 10, widthMm() - LEFT, key());
  }

  private List<Mark> limits() {
    List<Mark> limits = new ArrayList<>();
    if (data.least() > 0) {
      limits.add(new Mark(data.least(), data.leastLabel()));
    }
    if (data.greatest() > 0) {
      limits.add(new Mark(data.greatest(), data.greatestLabel()));
    }
    return limits;
  }

  private void planned(Canvas canvas, PlotFrame frame) {
    Lettering lettering = Lettering.SMALL.middle().above();
    List<Double> wanted = data.planned().stream().map(mark -> frame.x(mark.at())).toList();
    double gap =
        data.planned().stream()
            .mapToDouble(mark -> canvas.textWidth(mark.label(), lettering) + 2)
            .max()
            .orElse(0);
    List<Double> placed = Spread.apart(wanted, gap, frame.left() + gap / 2, widthMm() - gap / 2);
    for (int i = 0; i < data.planned().size(); i++) {
      double x = wanted.get(i);
      double to = placed.get(i);
      canvas.polyline(
          Pen.of(Palette.INK, 0.2), to, frame.top() - 4, x, frame.top() - 1.2, x, frame.bottom());
      canvas.text(to, frame.top() - 4.3, data.planned().get(i).label(), lettering);
    }
  }

  private List<Key.Entry> key() {
    List<Key.Entry> entries = new ArrayList<>();
    data.growth()
        .forEach(curve -> entries.add(Key.Entry.line(curve.name(), CurveStyle.pen(curve.role()))));
    if (data.window().size() == 2) {
      entries.add(Key.Entry.fill("neighbour may be drilled", Palette.ACCENT_TINT));
    }
    if (!data.planned().isEmpty()) {
      entries.add(Key.Entry.line("planned age", Pen.of(Palette.INK, 0.2)));
    }
    return entries;
  }
}
