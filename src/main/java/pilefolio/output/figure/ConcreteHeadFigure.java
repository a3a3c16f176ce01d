package pilefolio.output.figure;

import java.util.ArrayList;
import java.util.List;
import pilefolio.submittal.figure.ConcreteHeadData;
import pilefolio.submittal.figure.Curve;

/** Levels of concrete, shoe and water while the pile is filled. */
public final class ConcreteHeadFigure implements Figure {
  private static final double TOP = 3;
  private static final double LEFT = 18;

  private final ConcreteHeadData data;

  /** Draws the values given. */
  public ConcreteHeadFigure(ConcreteHeadData data) {
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
    return 90;
  }

  @Override
  public String caption() {
    return data.caption();
  }

  @Override
  public void draw(Canvas canvas) {
    Range volume = new Range().addX(data.curves());
    Range level = new Range().addY(data.curves());
    data.levels().forEach(mark -> level.add(mark.at()));
    Axis across = Axis.between(data.volumeTitle(), volume.low(), volume.high(), 8);
    Axis upward = Axis.rounded(data.levelTitle(), level.low(), level.high(), 7);
    double right = widthMm() - LevelLabels.width(canvas, data.levels()) - 1;
    PlotFrame frame = new PlotFrame(LEFT, TOP, right - LEFT, heightMm() - TOP - 21, across, upward);
    frame.grid(canvas);
    data.levels().forEach(mark -> frame.level(canvas, Pen.FINE.dashed(1.4, 0.9), mark.at()));
    List<Key.Entry> entries = new ArrayList<>();
    for (Curve curve : data.curves()) {
      Pen pen = CurveStyle.pen(curve.role());
      frame.curve(canvas, pen, CurveStyle.values(curve));
      entries.add(Key.Entry.line(curve.name(), pen));
    }
    frame.axes(canvas);
    LevelLabels.draw(canvas, frame.right(), TOP + 1, frame.bottom() - 1, data.levels(), frame::y);
    Key.inRows(canvas, LEFT, frame.bottom() + 10, widthMm() - LEFT, entries);
  }
}
