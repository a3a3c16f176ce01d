package pilefolio.output.figure;

import java.util.ArrayList;
import java.util.List;
import pilefolio.submittal.figure.Curve;
import pilefolio.submittal.figure.Mark;
import pilefolio.submittal.figure.SectionData;

/**
 * Ground, water, wall and supports at one stage, with the pressure diagrams beside on the same
 * levels. Heights are to scale; widths, except that of the wall, are not.
 */
public final class SectionFigure implements Figure {
  private static final double TOP = 12;
  private static final double FOOT = 17;
  private static final double LABEL_ROOM = 3;
  private static final double PANEL_GAP = 5;

  /** Room for half of a number at the end of the last scale. */
  private static final double RIGHT = 4;

  private final SectionData data;
  private final double high;
  private final double low;

  /** Draws the section given. */
  public SectionFigure(SectionData data) {
    this.data = data;
    Range levels = new Range();
    levels.add(data.groundBehind()).add(data.wallTop()).add(data.secondaryToe());
    data.layers().forEach(layer -> levels.add(layer.bottom()));
    data.levels().forEach(mark -> levels.add(mark.at()));
    data.waterBehind().ifPresent(levels::add);
    double above = (levels.high() - levels.low()) * 0.03;
    // Ground far below the wall only makes the rest small.
    double reach = data.groundBehind() - data.secondaryToe();
    this.low = Math.max(levels.low(), data.secondaryToe() - reach * 0.3);
    this.high = levels.high() + above;
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
    return 126;
  }

  @Override
  public String caption() {
    return data.caption();
  }

  private double y(double level) {
    return TOP + (high - level) / (high - low) * (heightMm() - TOP - FOOT);
  }

  @Override
  public void draw(Canvas canvas) {
    List<Mark> marks = data.levels().stream().filter(mark -> mark.at() >= low).toList();
    double labels = LevelLabels.width(canvas, marks) + LABEL_ROOM;
    int panels = data.pressures().size();
    double section = (168 - labels) * (panels == 0 ? 1 : panels == 1 ? 0.6 : 0.44);
    double wall = section * (panels == 2 ? 0.6 : 0.55);
    double bottom = y(low);
    double thickness =
        Math.max(2.2, Math.min(14, data.wallThickness() / (high - low) * (bottom - TOP)));
    double face = wall + thickness;
    ground(canvas, wall, face, section, bottom);
    water(canvas, wall, face, section);
    names(canvas, wall, bottom);
    wall(canvas, wall, thickness);
    supports(canvas, wall, face, section);
    surcharge(canvas, wall);
    double labelBottom = bottom - 0.5;
    LevelLabels.draw(canvas, section, TOP - 8, labelBottom, marks, this::y);
    double left = section + labels;
    double width = panels == 0 ? 0 : (widthMm() - RIGHT - left - PANEL_GAP * (panels - 1)) / panels;
    for (int i = 0; i < panels; i++) {
      panel(canvas, data.pressures().get(i), left + i * (width + PANEL_GAP), width);
    }
  }

  private void ground(Canvas canvas, double wall, double face, double right, double bottom) {
    for (SectionData.Layer layer : data.layers()) {
      double top = Math.min(layer.top(), data.groundBehind());
      double below = Math.max(layer.bottom(), low);
      if (top <= below) {
        continue;
      }
      fill(canvas, layer.ground(), 0, wall, y(top), y(below));
      double front = Math.min(layer.top(), data.excavation());
      if (front > below) {
        fill(canvas, layer.ground(), face, right, y(front), y(below));
      }
      canvas.line(Pen.of(Palette.LIGHT_GREY, 0.15), 0, y(below), wall, y(below));
      if (front > below) {
        canvas.line(Pen.of(Palette.LIGHT_GREY, 0.15), face, y(below), right, y(below));
      }
    }
    double toe = y(data.secondaryToe());
    if (toe < bottom) {
      belowToe(canvas, wall, face, toe);
    }
    canvas.line(Pen.BOLD, 0, y(data.groundBehind()), wall, y(data.groundBehind()));
    canvas.line(Pen.BOLD, face, y(data.excavation()), right, y(data.excavation()));
    if (data.overExcavation() < data.excavation()) {
      canvas.line(
          Pen.of(Palette.WARNING, 0.25).dashed(1.6, 1),
          face,
          y(data.overExcavation()),
          right,
          y(data.overExcavation()));
    }
  }

  /** Ground goes on below the toe of the wall. */
  private void belowToe(Canvas canvas, double wall, double face, double toe) {
    for (SectionData.Layer layer : data.layers()) {
      double top = Math.max(toe, y(layer.top()));
      double below = y(Math.max(layer.bottom(), low));
      if (below > top) {
        fill(canvas, layer.ground(), wall, face, top, below);
        canvas.line(Pen.of(Palette.LIGHT_GREY, 0.15), wall, below, face, below);
      }
    }
  }

  static void fill(
      Canvas canvas, SectionData.Ground ground, double x1, double x2, double y1, double y2) {
    double[] xy = {x1, y1, x2, y1, x2, y2, x1, y2};
    canvas.polygon(null, Palette.PAPER.tint(0.6), xy);
    Pen pen = Pen.of(Palette.LIGHT_GREY.tint(0.75), 0.12);
    switch (ground) {
      case FILL -> canvas.hatch(Hatch.STROKES, 1.5, pen, xy);
      case CLAY -> canvas.hatch(Hatch.LEVEL, 1.5, pen, xy);
      case SILT -> canvas.hatch(Hatch.DASHES, 1.4, pen, xy);
      case SAND -> canvas.hatch(Hatch.DOTS, 1.7, pen.with(Palette.GREY), xy);
      case GRAVEL -> canvas.hatch(Hatch.PEBBLES, 1.9, pen.with(Palette.GREY), xy);
      case ROCK -> canvas.hatch(Hatch.COURSES, 2.0, pen, xy);
    }
  }

  private void names(Canvas canvas, double wall, double bottom) {
    List<String> names = new ArrayList<>();
    List<Double> wanted = new ArrayList<>();
    for (SectionData.Layer layer : data.layers()) {
      double top = y(Math.min(layer.top(), data.groundBehind()));
      double below = y(Math.max(layer.bottom(), low));
      if (below - top > 0.5) {
        names.add(layer.name());
        wanted.add((top + below) / 2);
      }
    }
    Lettering lettering = Lettering.SMALL.centred();
    double ground = y(data.groundBehind());
    List<Double> placed =
        Spread.apart(wanted, lettering.lineMm() * 1.15, ground + 1.8, bottom - 1.6);
    for (int i = 0; i < names.size(); i++) {
      double length = Math.min(canvas.textWidth(names.get(i), lettering), wall - 6);
      double at = placed.get(i);
      canvas.rectangle(null, Palette.WHITE, 2.4, at - 1.35, length + 1.2, 2.7);
      canvas.text(3, at, names.get(i), shrunk(canvas, names.get(i), lettering, wall - 6));
      if (Math.abs(at - wanted.get(i)) > 0.8) {
        canvas.circle(null, Palette.GREY, 0.8, wanted.get(i), 0.35);
        canvas.line(Pen.FINE, 0.8, wanted.get(i), 2.3, at);
      }
    }
  }

  private static Lettering shrunk(Canvas canvas, String text, Lettering lettering, double room) {
    double length = canvas.textWidth(text, lettering);
    return length <= room ? lettering : lettering.sized(lettering.sizePt() * room / length);
  }

  private void water(Canvas canvas, double wall, double face, double right) {
    data.waterBehind().ifPresent(level -> waterLine(canvas, 0, wall, level, wall * 0.78));
    data.waterFront()
        .ifPresent(level -> waterLine(canvas, face, right, level, face + (right - face) * 0.55));
  }

  private void waterLine(Canvas canvas, double x1, double x2, double level, double sign) {
    if (level < low || level > high) {
      return;
    }
    double at = y(level);
    canvas.line(Pen.of(Palette.WATER, 0.35), x1, at, x2, at);
    canvas.polygon(
        Pen.of(Palette.WATER, 0.2),
        Palette.WHITE,
        sign,
        at,
        sign - 1.2,
        at - 2.1,
        sign + 1.2,
        at - 2.1);
    canvas.line(Pen.of(Palette.WATER, 0.2), sign - 1, at + 0.8, sign + 1, at + 0.8);
    canvas.line(Pen.of(Palette.WATER, 0.2), sign - 0.5, at + 1.5, sign + 0.5, at + 1.5);
  }

  private void wall(Canvas canvas, double x, double thickness) {
    double top = y(data.wallTop());
    double toe = y(Math.max(low, data.secondaryToe()));
    double primary = y(Math.max(low, data.primaryToe()));
    double[] upper = {x, top, x + thickness, top, x + thickness, primary, x, primary};
    canvas.polygon(null, Palette.WHITE, x, top, x + thickness, top, x + thickness, toe, x, toe);
    canvas.hatch(Hatch.CONCRETE, 1.2, Pen.of(Palette.LIGHT_GREY, 0.12), upper);
    canvas.rectangle(null, Palette.ACCENT_TINT, x, primary, thickness, Math.max(0, toe - primary));
    canvas.polygon(
        Pen.MEDIUM.wide(0.35), null, x, top, x + thickness, top, x + thickness, toe, x, toe);
    if (primary < toe) {
      canvas.line(Pen.MEDIUM.dashed(1.2, 0.7), x, primary, x + thickness, primary);
    }
    if (data.beam().size() == 2) {
      double beamTop = y(data.beam().get(0));
      double beamBottom = y(Math.max(low, data.beam().get(1)));
      double half = Math.max(0.5, thickness * 0.24);
      double middle = x + thickness / 2;
      canvas.rectangle(
          Pen.of(Palette.ACCENT, 0.3),
          Palette.ACCENT.tint(0.35),
          middle - half,
          beamTop,
          2 * half,
          beamBottom - beamTop);
    }
  }

  private void supports(Canvas canvas, double wall, double face, double right) {
    for (SectionData.Support support : data.supports()) {
      double at = y(support.level());
      Lettering lettering = Lettering.SMALL.bold().in(Palette.ACCENT);
      if (support.anchor()) {
        double slope = Math.toRadians(support.degreesDown());
        double reach = Math.min(wall - 3, (y(low) - at - 3) / Math.max(1e-6, Math.tan(slope)));
        double x2 = wall - reach;
        double y2 = at + reach * Math.tan(slope);
        double xf = wall - reach * 0.55;
        double yf = at + reach * 0.55 * Math.tan(slope);
        canvas.line(Pen.of(Palette.ACCENT, 0.4), face + 1.2, at, wall, at);
        canvas.line(Pen.of(Palette.ACCENT, 0.4), wall, at, xf, yf);
        canvas.line(Pen.of(Palette.ACCENT, 1.1), xf, yf, x2, y2);
        canvas.polygon(
            Pen.of(Palette.ACCENT, 0.25),
            Palette.WHITE,
            face,
            at - 1.5,
            face + 1.5,
            at - 1,
            face + 1.5,
            at + 1,
            face,
            at + 1.5);
        canvas.text(
            face + 2.2, at, support.label(), fitting(canvas, support, lettering, face, right));
      } else {
        canvas.rectangle(
            Pen.of(Palette.ACCENT, 0.3), Palette.WHITE, face, at - 0.9, right - face - 1, 1.8);
        canvas.line(Pen.of(Palette.ACCENT, 0.25), right - 1, at - 2, right - 1, at + 2);
        canvas.text(
            face + 1.5,
            at - 1.5,
            support.label(),
            shrunk(canvas, support.label(), lettering, right - face - 3).above());
      }
    }
  }

  private static Lettering fitting(
      Canvas canvas, SectionData.Support support, Lettering lettering, double face, double right) {
    return shrunk(canvas, support.label(), lettering, right - face - 3).centred();
  }

  private void surcharge(Canvas canvas, double wall) {
    if (data.surcharge().isEmpty()) {
      return;
    }
    double ground = y(data.groundBehind());
    double top = ground - 4.2;
    double end = wall - 2;
    canvas.line(Pen.MEDIUM, 2, top, end, top);
    int n = Math.max(3, (int) (end / 5));
    for (int i = 0; i <= n; i++) {
      double x = 2 + (end - 2) * i / n;
      canvas.arrow(Pen.MEDIUM.wide(0.2), x, top, x, ground - 0.4, 1.3);
    }
    canvas.text(2, top - 1, data.surcharge(), Lettering.SMALL.above());
  }

  private void panel(Canvas canvas, SectionData.PressurePanel panel, double left, double width) {
    double behind = new Range().add(0).addX(panel.behind()).high();
    double front = new Range().add(0).addX(panel.front()).high();
    double greatest = Math.max(1e-9, behind + front);
    double bottom = y(low);
    Axis scale = Axis.between(panel.title(), -behind - greatest * 0.04, front + greatest * 0.04, 4);
    List<Axis.Tick> ticks =
        scale.ticks().stream()
            .map(t -> new Axis.Tick(t.value(), t.label().replace("−", "")))
            .toList();
    Axis across = new Axis(panel.title(), scale.low(), scale.high(), false, ticks);
    Axis levels = new Axis(data.levelTitle(), low, high, false, List.of());
    PlotFrame frame = new PlotFrame(left, TOP, width, bottom - TOP, across, levels);
    frame.grid(canvas);
    frame.level(canvas, Pen.FINE.dashed(1.4, 0.9), data.excavation());
    for (boolean filled : new boolean[] {true, false}) {
      panel.behind().forEach(curve -> side(canvas, frame, curve, -1, filled));
      panel.front().forEach(curve -> side(canvas, frame, curve, 1, filled));
    }
    frame.upright(canvas, Pen.of(Palette.INK, 0.4), 0);
    frame.frame(canvas);
    frame.labelBelow(canvas);
    canvas.text(frame.x(0) - 1.2, TOP - 1.2, "behind", Lettering.SMALL.in(Palette.GREY).end());
    canvas.text(frame.x(0) + 1.2, TOP - 1.2, "in front", Lettering.SMALL.in(Palette.GREY));
    List<Key.Entry> entries = new ArrayList<>();
    List<String> names = new ArrayList<>();
    List<Curve> all = new ArrayList<>(panel.behind());
    all.addAll(panel.front());
    for (Curve curve : all) {
      if (!names.contains(curve.name())) {
        names.add(curve.name());
        entries.add(Key.Entry.line(curve.name(), CurveStyle.pen(curve.role())));
      }
    }
    Key.inRows(canvas, left, bottom + 8.6, width + PANEL_GAP, entries);
  }

  private static void side(Canvas canvas, PlotFrame frame, Curve curve, int sign, boolean filled) {
    if (curve.points().isEmpty()) {
      return;
    }
    double[] xy = CurveStyle.values(curve);
    for (int i = 0; i < xy.length; i += 2) {
      xy[i] *= sign;
    }
    if (!filled) {
      frame.curve(canvas, CurveStyle.pen(curve.role()), xy);
      return;
    }
    double[] closed = new double[xy.length + 4];
    System.arraycopy(xy, 0, closed, 2, xy.length);
    closed[1] = xy[1];
    closed[closed.length - 1] = xy[xy.length - 1];
    if (curve.role() == Curve.Role.MAIN) {
      frame.area(canvas, Palette.ACCENT_TINT, closed);
    } else if (curve.role() == Curve.Role.WATER) {
      frame.area(canvas, Palette.WATER.tint(0.16), closed);
    }
  }
}
