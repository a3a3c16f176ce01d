package pilefolio.output.pdf;

import com.lowagie.text.pdf.PdfContentByte;
import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import pilefolio.output.figure.Canvas;
import pilefolio.output.figure.Ink;
import pilefolio.output.figure.Label;
import pilefolio.output.figure.Lettering;
import pilefolio.output.figure.Pen;
import pilefolio.output.pdf.face.Typeface;

/** Draws on a page as lines and text; uses no platform fonts and no pictures. */
final class PdfCanvas implements Canvas {
  private static final double POINTS_PER_MM = 72 / 25.4;
  private static final double SCRIPT_SCALE = 0.72;

  private final PdfContentByte page;
  private final double width;
  private final double height;
  private final BiConsumer<Typeface, Integer> missing;
  private final List<String> strayText = new ArrayList<>();

  /**
   * A canvas whose lower left corner is the origin of a page stream, in points.
   *
   * @param missing told of each character that a face does not have
   */
  PdfCanvas(
      PdfContentByte page, double widthMm, double heightMm, BiConsumer<Typeface, Integer> missing) {
    this.page = page;
    this.width = widthMm;
    this.height = heightMm;
    this.missing = missing;
  }

  /** Labels that reach past the edge of the sheet, in the order drawn. */
  List<String> strayText() {
    return List.copyOf(strayText);
  }

  @Override
  public double widthMm() {
    return width;
  }

  @Override
  public double heightMm() {
    return height;
  }

  @Override
  public void polyline(Pen pen, double... xy) {
    if (xy.length < 4) {
      return;
    }
    stroke(pen);
    trace(xy);
    page.stroke();
  }

  @Override
  public void polygon(Pen pen, Ink fill, double... xy) {
    paint(pen, fill, () -> trace(xy));
  }

  @Override
  public void circle(Pen pen, Ink fill, double x, double y, double radius) {
    paint(pen, fill, () -> page.circle(px(x), py(y), pt(radius)));
  }

  @Override
  public void arc(
      Pen pen, double x, double y, double radius, double startDegrees, double sweepDegrees) {
    stroke(pen);
    page.arc(
        px(x - radius),
        py(y + radius),
        px(x + radius),
        py(y - radius),
        (float) startDegrees,
        (float) sweepDegrees);
    page.stroke();
  }

  @Override
  public void clipped(double[] xy, Runnable drawing) {
    page.saveState();
    trace(xy);
    page.closePath();
    page.clip();
    page.newPath();
    drawing.run();
    page.restoreState();
  }

  @Override
  public double textWidth(String markup, Lettering lettering) {
    Typeface face = face(lettering.style());
    double points = 0;
    for (Label.Part part : Label.parse(markup).parts()) {
      points += face.width(part.text(), size(part, lettering));
    }
    return points / POINTS_PER_MM;
  }

  @Override
  public void text(double x, double y, String markup, Lettering lettering) {
    if (markup.isEmpty()) {
      return;
    }
    Typeface face = face(lettering.style());
    double length = textWidth(markup, lettering);
    double back =
        switch (lettering.along()) {
          case START -> 0;
          case MIDDLE -> length / 2;
          case END -> length;
        };
    double cap = lettering.capHeightMm();
    double down =
        switch (lettering.across()) {
          case BASELINE -> 0;
          case CENTRE -> cap / 2;
          case TOP -> cap;
          case BOTTOM -> -cap * 0.3;
        };
    double turn = Math.toRadians(lettering.turnedDegrees());
    double c = Math.cos(turn);
    double s = Math.sin(turn);
    double startX = x - back * c + down * s;
    double startY = y + back * s + down * c;
    noteStray(startX, startY, length, cap, c, s, markup);
    page.saveState();
    page.setColorFill(colour(lettering.ink()));
    page.beginText();
    double along = 0;
    for (Label.Part part : Label.parse(markup).parts()) {
      part.text()
          .codePoints()
          .filter(cp -> !face.shows(cp))
          .forEach(cp -> missing.accept(face, cp));
      double size = size(part, lettering);
      double rise =
          switch (part.place()) {
            case BASE -> 0;
            case SUB -> -0.16 * lettering.sizePt() / POINTS_PER_MM;
            case SUPER -> 0.34 * lettering.sizePt() / POINTS_PER_MM;
          };
      page.setFontAndSize(face.font(), (float) size);
      page.setTextMatrix(
          (float) c,
          (float) s,
          (float) -s,
          (float) c,
          px(startX + along * c - rise * s),
          py(startY - along * s - rise * c));
      page.showText(part.text());
      along += face.width(part.text(), size) / POINTS_PER_MM;
    }
    page.endText();
    page.restoreState();
  }

  private void noteStray(
      double x, double y, double length, double cap, double c, double s, String markup) {
    double slack = 0.3;
    double[] xs = {x, x + length * c, x - cap * s, x + length * c - cap * s};
    double[] ys = {y, y - length * s, y - cap * c, y - length * s - cap * c};
    for (int i = 0; i < xs.length; i++) {
      if (xs[i] < -slack || xs[i] > width + slack || ys[i] < -slack || ys[i] > height + slack) {
        strayText.add(markup);
        return;
      }
    }
  }

  private static double size(Label.Part part, Lettering lettering) {
    return part.place() == Label.Place.BASE
        ? lettering.sizePt()
        : lettering.sizePt() * SCRIPT_SCALE;
  }

  private static Typeface face(Lettering.Style style) {
    return switch (style) {
      case REGULAR -> Typeface.SANS;
      case BOLD -> Typeface.SANS_BOLD;
      case ITALIC -> Typeface.SANS_ITALIC;
    };
  }

  private void paint(Pen pen, Ink fill, Runnable path) {
    if (pen == null && fill == null) {
      return;
    }
    page.saveState();
    if (fill != null) {
      page.setColorFill(colour(fill));
    }
    if (pen != null) {
      stroke(pen);
    }
    path.run();
    if (pen == null) {
      page.fill();
    } else if (fill == null) {
      page.closePathStroke();
    } else {
      page.closePathFillStroke();
    }
    page.restoreState();
  }

  private void stroke(Pen pen) {
    page.setColorStroke(colour(pen.ink()));
    page.setLineWidth(pt(pen.widthMm()));
    page.setLineJoin(PdfContentByte.LINE_JOIN_ROUND);
    page.setLineCap(
        pen.dashMm().isEmpty() ? PdfContentByte.LINE_CAP_ROUND : PdfContentByte.LINE_CAP_BUTT);
    float[] dash = new float[pen.dashMm().size()];
    for (int i = 0; i < dash.length; i++) {
      dash[i] = pt(pen.dashMm().get(i));
    }
    page.setLineDash(dash, 0);
  }

  private void trace(double... xy) {
    page.moveTo(px(xy[0]), py(xy[1]));
    for (int i = 2; i + 1 < xy.length; i += 2) {
      page.lineTo(px(xy[i]), py(xy[i + 1]));
    }
  }

  private static Color colour(Ink ink) {
    return new Color(ink.red(), ink.green(), ink.blue());
  }

  private static float pt(double mm) {
    return (float) (mm * POINTS_PER_MM);
  }

  private float px(double x) {
    return pt(x);
  }

  private float py(double y) {
    return pt(height - y);
  }
}
