package pilefolio.output.figure;

import java.util.ArrayList;
import java.util.List;
import pilefolio.submittal.figure.SectionData;
import pilefolio.submittal.figure.SlipCircleData;

/** A slip circle with its slices on the section of a run, heights and widths to one scale. */
public final class SlipCircleFigure implements Figure {
  private static final double TOP = 6;
  private static final double FOOT = 9;
  private static final double LABEL_ROOM = 2;

  /** Share of the depth of the circle that is shown above the ground, at most. */
  private static final double ABOVE = 0.45;

  private final SlipCircleData data;
  private final double low;
  private final double high;
  private final double left;
  private final double right;

  /** Draws the values given. */
  public SlipCircleFigure(SlipCircleData data) {
    this.data = data;
    double lowest = data.circle().level() - data.circle().radius();
    Range levels = new Range().add(data.groundBehind()).add(data.wallTop()).add(lowest);
    data.layers().forEach(layer -> levels.add(layer.bottom()));
    double depth = data.groundBehind() - lowest;
    this.low = levels.low();
    this.high =
        Math.max(
            levels.high() + 0.05 * depth,
            Math.min(data.circle().level() + 0.03 * depth, data.groundBehind() + ABOVE * depth));
    double room = 0.08 * (data.circle().entry() - data.circle().exit());
    double reach = data.supports().stream().mapToDouble(SlipCircleData.Tie::reach).max().orElse(0);
    this.left = Math.max(data.circle().entry(), reach) + room;
    this.right = data.circle().exit() - room;
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
    return Math.min(125, 120 * (high - low) / (left - right) + TOP + FOOT);
  }

  @Override
  public String caption() {
    return data.caption();
  }

  @Override
  public void draw(Canvas canvas) {
    double labels = LevelLabels.width(canvas, data.levels()) + LABEL_ROOM;
    double scale =
        Math.min((widthMm() - labels) / (left - right), (heightMm() - TOP - FOOT) / (high - low));
    new Drawing(canvas, scale).draw();
  }

  /** The drawing at a scale in mm per unit of length. */
  private final class Drawing {
    private final Canvas canvas;
    private final double scale;

    Drawing(Canvas canvas, double scale) {
      this.canvas = canvas;
      this.scale = scale;
    }

    private double x(double distance) {
      return (left - distance) * scale;
    }

    private double y(double level) {
      return TOP + (high - level) * scale;
    }

    void draw() {
      ground();
      slices();
      water();
      wall();
      circle();
      names();
      LevelLabels.draw(canvas, x(right), TOP, y(low), data.levels(), this::y);
      ScaleBar.draw(canvas, 1, y(low) + 2.5, scale, 30, data.unit());
    }

    private void ground() {
      for (SectionData.Layer layer : data.layers()) {
        double bottom = y(layer.bottom());
        SectionFigure.fill(canvas, layer.ground(), x(left), x(0), y(layer.top()), bottom);
        double top = Math.min(layer.top(), data.groundFront());
        if (top > layer.bottom()) {
          SectionFigure.fill(canvas, layer.ground(), x(0), x(right), y(top), bottom);
        }
        Pen pen = Pen.of(Palette.LIGHT_GREY, 0.15);
        canvas.line(pen, x(left), bottom, x(top > layer.bottom() ? right : 0), bottom);
      }
    }

    private double surface(double distance) {
      return distance > 0 ? data.groundBehind() : data.groundFront();
    }

    private void slices() {
      List<Double> body = new ArrayList<>();
      int steps = 60;
      SlipCircleData.Circle c = data.circle();
      for (int i = 0; i <= steps; i++) {
        double at = c.exit() + (c.entry() - c.exit()) * i / steps;
        body.add(x(at));
        body.add(y(c.at(at)));
      }
      for (double corner : new double[] {c.entry(), 0}) {
        body.add(x(corner));
        body.add(y(data.groundBehind()));
      }
      for (double corner : new double[] {0, c.exit()}) {
        body.add(x(corner));
        body.add(y(data.groundFront()));
      }
      double[] xy = body.stream().mapToDouble(Double::doubleValue).toArray();
      canvas.polygon(null, Palette.ACCENT_TINT, xy);
      Pen pen = Pen.of(Palette.ACCENT, 0.13);
      for (double side : data.slices()) {
        if (side < c.entry() - 1e-9) {
          canvas.line(pen, x(side), y(c.at(side)), x(side), y(surface(side)));
        }
      }
      canvas.line(Pen.BOLD, x(left), y(data.groundBehind()), x(0), y(data.groundBehind()));
      canvas.line(Pen.BOLD, x(0), y(data.groundFront()), x(right), y(data.groundFront()));
    }

    private void water() {
      Pen pen = Pen.of(Palette.WATER, 0.35);
      data.waterBehind().ifPresent(level -> line(pen, left, 0, level));
      data.waterFront().ifPresent(level -> line(pen, 0, right, level));
    }

    private void line(Pen pen, double from, double to, double level) {
      if (level > low && level < high) {
        canvas.line(pen, x(from), y(level), x(to), y(level));
      }
    }

    private void wall() {
      double half = 0.8;
      canvas.rectangle(
          Pen.MEDIUM,
          Palette.WHITE,
          x(0) - half,
          y(data.wallTop()),
          2 * half,
          y(data.toe()) - y(data.wallTop()));
      for (SlipCircleData.Tie tie : data.supports()) {
        if (tie.reach() > 0) {
          canvas.line(
              Pen.MEDIUM, x(0), y(tie.level()), x(tie.reach()), y(tie.level() - tie.drop()));
        } else {
          canvas.line(Pen.MEDIUM, x(0), y(tie.level()), x(right), y(tie.level()));
        }
      }
    }

    private void circle() {
      SlipCircleData.Circle c = data.circle();
      double[] frame = {x(left), TOP, x(right), TOP, x(right), y(low), x(left), y(low)};
      List<Double> arc = new ArrayList<>();
      int steps = 90;
      for (int i = 0; i <= steps; i++) {
        double at = c.exit() + (c.entry() - c.exit()) * i / steps;
        arc.add(x(at));
        arc.add(y(c.at(at)));
      }
      double[] xy = arc.stream().mapToDouble(Double::doubleValue).toArray();
      canvas.polyline(Pen.of(Palette.ACCENT, 0.5), xy);
      canvas.clipped(
          frame,
          () -> {
            Pen radius = Pen.FINE.dashed(1.4, 0.9);
            canvas.line(radius, x(c.x()), y(c.level()), x(c.entry()), y(data.groundBehind()));
            canvas.line(radius, x(c.x()), y(c.level()), x(c.exit()), y(data.groundFront()));
          });
      if (c.level() <= high) {
        canvas.circle(null, Palette.INK, x(c.x()), y(c.level()), 0.5);
      }
      double at = Math.max(y(data.groundFront()) - 3, TOP + 3);
      double length = canvas.textWidth(c.label(), Lettering.HEAD);
      canvas.rectangle(null, Palette.WHITE, x(right) - 2.4 - length, at - 2.9, length + 0.8, 3.6);
      canvas.text(x(right) - 2, at, c.label(), Lettering.HEAD.end());
    }

    private void names() {
      Lettering lettering = Lettering.SMALL.centred();
      double free = y(data.groundBehind());
      for (SectionData.Layer layer : data.layers()) {
        double at = (y(layer.top()) + y(layer.bottom())) / 2;
        if (at - free > lettering.lineMm() / 2) {
          double length = canvas.textWidth(layer.name(), lettering);
          canvas.rectangle(null, Palette.WHITE, 1, at - 1.35, length + 1.2, 2.7);
          canvas.text(1.6, at, layer.name(), lettering);
          free = at + lettering.lineMm() / 2;
        }
      }
    }
  }
}
