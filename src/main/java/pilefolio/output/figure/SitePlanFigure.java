package pilefolio.output.figure;

import java.util.ArrayList;
import java.util.List;
import pilefolio.submittal.figure.Curve;
import pilefolio.submittal.figure.SitePlanData;
import pilefolio.submittal.figure.SitePlanData.PlanPile;

/**
 * A plan of the wall to scale, and below it the same piles along the wall line in strips, large
 * enough for marks and drilling order.
 */
public final class SitePlanFigure implements Figure {
  private static final double WIDTH = 168;
  private static final double PLAN_MOST = 66;
  private static final double PLAN_FOOT = 9;
  private static final double KEY = 7;

  /** Height that fits on a page of either size with its caption, in mm. */
  private static final double MOST = 212;

  private static final double STRIP_LEFT = 19;

  /** Distance of neighbouring piles on the strips, in mm, that leaves room for their marks. */
  private static final double SPACING = 6.2;

  private static final double CORNER_DEGREES = 8;

  private final SitePlanData data;
  private final int sheet;
  private final PlanView plan;
  private final double stripScale;
  private final double stripHeight;
  private final boolean ordered;
  private final List<List<PlanPile>> all;
  private final int firstStrip;
  private final int lastStrip;

  /**
   * The piles on as many sheets as fit on pages: the plan with the first strips, then further
   * strips. The first sheet has the id of the data, the others that id with -sheet-2 and so on.
   *
   * @throws IllegalArgumentException when there are fewer than two piles
   */
  public static List<SitePlanFigure> sheets(SitePlanData data) {
    List<SitePlanFigure> sheets = new ArrayList<>();
    int next = 0;
    do {
      SitePlanFigure sheet = new SitePlanFigure(data, sheets.size() + 1, next);
      sheets.add(sheet);
      next = sheet.lastStrip;
    } while (next < sheets.get(0).all.size());
    return List.copyOf(sheets);
  }

  private SitePlanFigure(SitePlanData data, int sheet, int firstStrip) {
    if (data.piles().size() < 2) {
      throw new IllegalArgumentException("a site plan needs at least two piles");
    }
    this.data = data;
    this.sheet = sheet;
    double spacing = Double.MAX_VALUE;
    double diameter = 0;
    for (int i = 0; i < data.piles().size(); i++) {
      diameter = Math.max(diameter, data.piles().get(i).diameter());
      if (i > 0) {
        double step = data.piles().get(i).along() - data.piles().get(i - 1).along();
        spacing = step > 0 ? Math.min(spacing, step) : spacing;
      }
    }
    this.stripScale = stripScale(data.piles(), spacing, diameter);
    this.ordered = data.piles().stream().anyMatch(pile -> pile.order() > 0);
    this.stripHeight = diameter * stripScale + (ordered ? 23 : 17);
    this.all = strips(diameter);
    this.plan = new PlanView(data, WIDTH, PLAN_MOST, stripScale * 0.8);
    this.firstStrip = firstStrip;
    double room = MOST - KEY - planHeight();
    int fit = Math.max(1, (int) (room / stripHeight));
    this.lastStrip = Math.min(all.size(), firstStrip + fit);
  }

  private double planHeight() {
    return sheet == 1 ? plan.height() + PLAN_FOOT : 0;
  }

  /** Scale that leaves room for the marks, larger when a short wall leaves the strip half empty. */
  private static double stripScale(List<PlanPile> piles, double spacing, double diameter) {
    double least = SPACING / spacing;
    double total = piles.get(piles.size() - 1).along() - piles.get(0).along();
    double fits = (WIDTH - STRIP_LEFT) / (total + diameter);
    return Math.max(least, Math.min(least * 1.5, fits));
  }

  private List<List<PlanPile>> strips(double diameter) {
    List<PlanPile> piles = data.piles();
    double room = WIDTH - STRIP_LEFT - diameter * stripScale;
    double first = piles.get(0).along();
    double total = (piles.get(piles.size() - 1).along() - first) * stripScale;
    int count = Math.max(1, (int) Math.ceil(total / room));
    double each = Math.min(room, total / count + SPACING);
    List<List<PlanPile>> split = new ArrayList<>();
    List<PlanPile> strip = new ArrayList<>();
    for (PlanPile pile : piles) {
      if (!strip.isEmpty() && (pile.along() - strip.get(0).along()) * stripScale > each) {
        split.add(strip);
        strip = new ArrayList<>();
      }
      strip.add(pile);
    }
    split.add(strip);
    return split;
  }

  @Override
  public String id() {
    return sheet == 1 ? data.id() : data.id() + "-sheet-" + sheet;
  }

  @Override
  public double widthMm() {
    return WIDTH;
  }

  @Override
  public double heightMm() {
    return planHeight() + (lastStrip - firstStrip) * stripHeight + KEY;
  }

  @Override
  public String caption() {
    return sheet == 1 ? data.caption() : "Sheet " + sheet + ". " + data.caption();
  }

  @Override
  public void draw(Canvas canvas) {
    if (sheet == 1) {
      plan.draw(canvas, all);
    }
    double y = planHeight();
    for (int i = firstStrip; i < lastStrip; i++) {
      strip(canvas, all.get(i), y, i + 1);
      y += stripHeight;
    }
    key(canvas, y + 1);
  }

  private void strip(Canvas canvas, List<PlanPile> piles, double top, int number) {
    double radius = piles.stream().mapToDouble(PlanPile::diameter).max().orElse(0) / 2 * stripScale;
    double axis = top + (ordered ? 9.5 : 3.5) + radius;
    double start = piles.get(0).along();
    canvas.text(0, axis, "Strip " + number, Lettering.SMALL.bold().centred());
    Lettering note = Lettering.SMALL.in(Palette.GREY).centred();
    if (ordered) {
      canvas.text(0, top + 5.2, "order", note);
    }
    canvas.text(0, axis + radius + 3.4, "mark", note);
    canvas.text(0, axis + radius + 10.2, "along, " + data.unit(), note);
    for (boolean secondaries : new boolean[] {false, true}) {
      for (PlanPile pile : piles) {
        if (pile.secondary() == secondaries) {
          circle(canvas, pile, place(pile, start, radius), axis);
        }
      }
    }
    for (int i = 0; i < piles.size(); i++) {
      PlanPile pile = piles.get(i);
      double x = place(pile, start, radius);
      double high = pile.secondary() ? top + 3.7 : top + 6.7;
      double low = axis + radius + (pile.secondary() ? 2.2 : 5);
      if (pile.order() > 0) {
        canvas.text(
            x, high, Integer.toString(pile.order()), lettering(pile).bold().middle().centred());
      }
      canvas.text(x, low, Label.plain(pile.mark()), fitted(canvas, pile));
    }
    corners(canvas, piles, start, radius, axis);
    scale(canvas, piles, start, radius, axis + radius + 7.8);
  }

  private double place(PlanPile pile, double start, double radius) {
    return STRIP_LEFT + radius + (pile.along() - start) * stripScale;
  }

  private static Lettering lettering(PlanPile pile) {
    return Lettering.SMALL.in(pile.secondary() ? Palette.ACCENT : Palette.INK);
  }

  private static Lettering fitted(Canvas canvas, PlanPile pile) {
    Lettering wanted = lettering(pile).middle().centred();
    double length = canvas.textWidth(Label.plain(pile.mark()), wanted);
    double room = 2 * SPACING - 0.6;
    return length <= room ? wanted : wanted.sized(6 * room / length);
  }

  private void circle(Canvas canvas, PlanPile pile, double x, double y) {
    double radius = pile.diameter() / 2 * stripScale;
    Pen pen = pile.secondary() ? Pen.of(Palette.ACCENT, 0.3) : Pen.of(Palette.GREY, 0.2);
    canvas.circle(pen, pile.secondary() ? Palette.ACCENT_TINT : Palette.WHITE, x, y, radius);
    if (pile.beam()) {
      beam(canvas, x, y, radius * 0.52);
    }
  }

  /** A wide-flange shape with its flanges along the wall. */
  private static void beam(Canvas canvas, double x, double y, double half) {
    Pen pen = Pen.of(Palette.INK, 0.4);
    canvas.line(pen, x - half * 0.75, y - half, x + half * 0.75, y - half);
    canvas.line(pen, x - half * 0.75, y + half, x + half * 0.75, y + half);
    canvas.line(pen.wide(0.3), x, y - half, x, y + half);
  }

  private void corners(
      Canvas canvas, List<PlanPile> strip, double start, double radius, double axis) {
    for (PlanPile pile : strip) {
      int i = data.piles().indexOf(pile);
      double turn = turnAt(i);
      boolean sharper = turn >= CORNER_DEGREES && turn > turnAt(i - 1) && turn >= turnAt(i + 1);
      if (sharper) {
        double x = place(pile, start, radius);
        Pen pen = Pen.of(Palette.WARNING, 0.2).dashed(0.9, 0.6);
        canvas.line(pen, x, axis - radius - 0.8, x, axis + radius + 0.8);
        canvas.text(
            x,
            axis - radius - (ordered ? 9.2 : 2.2),
            "corner",
            Lettering.SMALL.sized(5).in(Palette.WARNING).middle().centred());
      }
    }
  }

  /** By how much the wall turns at a pile, in degrees. */
  private double turnAt(int i) {
    List<PlanPile> piles = data.piles();
    if (i <= 0 || i >= piles.size() - 1) {
      return 0;
    }
    double before = direction(piles.get(i - 1), piles.get(i));
    double after = direction(piles.get(i), piles.get(i + 1));
    return Math.abs(Math.IEEEremainder(after - before, 360));
  }

  private static double direction(PlanPile from, PlanPile to) {
    return Math.toDegrees(Math.atan2(to.y() - from.y(), to.x() - from.x()));
  }

  private void scale(Canvas canvas, List<PlanPile> piles, double start, double radius, double y) {
    double end = piles.get(piles.size() - 1).along();
    double x2 = place(piles.get(piles.size() - 1), start, radius);
    canvas.line(Pen.FINE, STRIP_LEFT + radius, y, x2, y);
    if (end <= start) {
      return;
    }
    int about = Math.max(2, (int) ((end - start) * stripScale / 25));
    for (Axis.Tick tick : Axis.between("", start, end, about).ticks()) {
      double x = STRIP_LEFT + radius + (tick.value() - start) * stripScale;
      canvas.line(Pen.FINE, x, y, x, y + 1);
      canvas.text(x, y + 2.4, tick.label(), Lettering.SMALL.in(Palette.GREY).middle().centred());
    }
  }

  private void key(Canvas canvas, double y) {
    double x = STRIP_LEFT;
    double axis = y + 2.2;
    canvas.circle(Pen.of(Palette.GREY, 0.2), Palette.WHITE, x + 2, axis, 1.8);
    canvas.text(x + 5, axis, "primary", Lettering.SMALL.centred());
    canvas.circle(Pen.of(Palette.ACCENT, 0.3), Palette.ACCENT_TINT, x + 25, axis, 1.8);
    canvas.text(x + 28, axis, "secondary", Lettering.SMALL.centred());
    if (data.piles().stream().anyMatch(PlanPile::beam)) {
      beam(canvas, x + 50, axis, 1.3);
      canvas.text(x + 53, axis, "steel beam", Lettering.SMALL.centred());
    }
  }

  /** The true plan with its scale bar, strip numbers and north. */
  private static final class PlanView {
    private static final double EDGE = 6;

    private final SitePlanData data;
    private final double scale;
    private final double height;
    private final double left;
    private final double minX;
    private final double maxY;

    /** Places where text stands already: centre and half sizes. */
    private final List<double[]> taken = new ArrayList<>();

    PlanView(SitePlanData data, double width, double most, double greatestScale) {
      this.data = data;
      Range xs = new Range();
      Range ys = new Range();
      for (PlanPile pile : data.piles()) {
        double r = pile.diameter() / 2;
        xs.add(pile.x() - r).add(pile.x() + r);
        ys.add(pile.y() - r).add(pile.y() + r);
      }
      for (SitePlanData.Outline outline : data.outlines()) {
        for (Curve.Point point : outline.points()) {
          xs.add(point.x());
          ys.add(point.y());
        }
      }
      double room = width - 2 * EDGE - 12;
      double w = xs.high() - xs.low();
      double h = ys.high() - ys.low();
      this.scale = Math.min(greatestScale, Math.min(room / w, (most - 2 * EDGE) / h));
      this.height = Math.max(22, h * scale + 2 * EDGE);
      this.left = EDGE + (room - w * scale) / 2;
      this.minX = xs.low();
      this.maxY = ys.high() + ((height - 2 * EDGE) / scale - h) / 2;
    }

    double height() {
      return height;
    }

    private double x(double value) {
      return left + (value - minX) * scale;
    }

    private double y(double value) {
      return EDGE + (maxY - value) * scale;
    }

    void draw(Canvas canvas, List<List<PlanPile>> strips) {
      taken.clear();
      for (SitePlanData.Outline outline : data.outlines()) {
        outline(canvas, outline);
      }
      for (boolean secondaries : new boolean[] {false, true}) {
        for (PlanPile pile : data.piles()) {
          if (pile.secondary() == secondaries) {
            double radius = Math.max(0.35, pile.diameter() / 2 * scale);
            Pen pen = secondaries ? Pen.of(Palette.ACCENT, 0.15) : Pen.of(Palette.GREY, 0.12);
            canvas.circle(
                pen,
                secondaries ? Palette.ACCENT.tint(0.45) : Palette.WHITE,
                x(pile.x()),
                y(pile.y()),
                radius);
          }
        }
      }
      if (strips.size() > 1) {
        for (int i = 0; i < strips.size(); i++) {
          middle(canvas, strips.get(i), i + 1);
        }
      }
      for (List<PlanPile> strip : strips) {
        end(canvas, strip, true);
        end(canvas, strip, false);
      }
      ScaleBar.draw(canvas, EDGE, height + 1, scale, 32, data.unit());
      data.northDegrees().ifPresent(degrees -> north(canvas, degrees));
    }

    private void outline(Canvas canvas, SitePlanData.Outline outline) {
      double[] xy = new double[outline.points().size() * 2];
      double sumX = 0;
      double sumY = 0;
      for (int i = 0; i < outline.points().size(); i++) {
        xy[2 * i] = x(outline.points().get(i).x());
        xy[2 * i + 1] = y(outline.points().get(i).y());
        sumX += xy[2 * i];
        sumY += xy[2 * i + 1];
      }
      canvas.polygon(null, Palette.PAPER, xy);
      canvas.hatch(Hatch.RISING, 2.4, Pen.of(Palette.FAINT, 0.12), xy);
      canvas.polygon(Pen.of(Palette.LIGHT_GREY, 0.2), null, xy);
      int n = outline.points().size();
      if (!outline.label().isEmpty()) {
        Lettering lettering = Lettering.SMALL.in(Palette.GREY).middle().centred();
        double length = canvas.textWidth(outline.label(), lettering);
        double cx = sumX / n;
        double cy = sumY / n;
        canvas.rectangle(null, Palette.WHITE, cx - length / 2 - 0.6, cy - 1.4, length + 1.2, 2.8);
        canvas.text(cx, cy, outline.label(), lettering);
        taken.add(new double[] {cx, cy, length / 2, 1.2});
      }
    }

    /** Names the first and the last pile of a strip beside the wall. */
    private void end(Canvas canvas, List<PlanPile> strip, boolean first) {
      PlanPile pile = first ? strip.get(0) : strip.get(strip.size() - 1);
      PlanPile other =
          strip.get(first ? Math.min(1, strip.size() - 1) : Math.max(0, strip.size() - 2));
      double px = x(pile.x());
      double py = y(pile.y());
      double dx = x(other.x()) - px;
      double dy = y(other.y()) - py;
      double length = Math.max(1e-9, Math.hypot(dx, dy));
      // A little into the strip, so that the last of one and the first of the next stay apart.
      double in = 2.2;
      double nx = dy / length;
      double ny = -dx / length;
      double side = first ? 1 : -1;
      double away = pile.diameter() / 2 * scale + 2.6;
      double ax = px + dx / length * in + nx * away * side;
      double ay = py + dy / length * in + ny * away * side;
      Lettering lettering = Lettering.SMALL.sized(5.5).centred();
      String mark = Label.plain(pile.mark());
      double half = canvas.textWidth(mark, lettering) / 2;
      double push = Math.abs(nx) * half;
      double at = ax + Math.signum(nx * side) * push * 0.9;
      // The strips name every pile; on a crowded plan some of these names are left out.
      if (claim(at, ay, half, 1.1)) {
        canvas.text(at, ay, mark, lettering.middle());
      }
    }

    /** Whether a place for text is free; takes it if so. */
    private boolean claim(double x, double y, double halfWidth, double halfHeight) {
      for (double[] other : taken) {
        if (Math.abs(x - other[0]) < halfWidth + other[2] + 0.4
            && Math.abs(y - other[1]) < halfHeight + other[3] + 0.3) {
          return false;
        }
      }
      taken.add(new double[] {x, y, halfWidth, halfHeight});
      return true;
    }

    private void middle(Canvas canvas, List<PlanPile> strip, int number) {
      PlanPile at = strip.get(strip.size() / 2);
      PlanPile next = strip.get(Math.min(strip.size() - 1, strip.size() / 2 + 1));
      double dx = x(next.x()) - x(at.x());
      double dy = y(next.y()) - y(at.y());
      double length = Math.max(1e-9, Math.hypot(dx, dy));
      double nearest = at.diameter() / 2 * scale + 3;
      double away = nearest;
      double cx;
      double cy;
      do {
        cx = x(at.x()) - dy / length * away;
        cy = y(at.y()) + dx / length * away;
        away += 1;
      } while (!claim(cx, cy, 1.9, 1.9) && away < nearest + 25);
      canvas.circle(Pen.of(Palette.ACCENT, 0.2), Palette.WHITE, cx, cy, 1.9);
      canvas.text(
          cx,
          cy,
          Integer.toString(number),
          Lettering.SMALL.bold().in(Palette.ACCENT).middle().centred());
    }

    private static void north(Canvas canvas, double degrees) {
      double c = Math.cos(Math.toRadians(degrees));
      double s = -Math.sin(Math.toRadians(degrees));
      double cx = WIDTH - 8;
      double cy = 9;
      canvas.arrow(Pen.of(Palette.INK, 0.25), cx - c * 5, cy - s * 5, cx + c * 5, cy + s * 5, 3);
      canvas.text(cx + c * 7, cy + s * 7, "N", Lettering.LABEL.bold().middle().centred());
    }
  }
}
