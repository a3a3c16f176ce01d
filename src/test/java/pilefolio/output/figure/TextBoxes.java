package pilefolio.output.figure;

import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import pilefolio.output.pdf.face.Typeface;

/** A canvas that only remembers where text stands. */
final class TextBoxes implements Canvas {
  private final double width;
  private final double height;
  private final List<String> texts = new ArrayList<>();
  private final List<Path2D> shapes = new ArrayList<>();

  TextBoxes(double width, double height) {
    this.width = width;
    this.height = height;
  }

  int count() {
    return texts.size();
  }

  int countMatching(String pattern) {
    return (int) texts.stream().filter(text -> text.matches(pattern)).count();
  }

  /** Pairs of labels that cover each other. */
  List<String> overlaps() {
    List<String> found = new ArrayList<>();
    for (int i = 0; i < shapes.size(); i++) {
      for (int j = i + 1; j < shapes.size(); j++) {
        if (shapes.get(i).getBounds2D().intersects(shapes.get(j).getBounds2D())) {
          Area both = new Area(shapes.get(i));
          both.intersect(new Area(shapes.get(j)));
          if (!both.isEmpty()) {
            found.add(texts.get(i) + " | " + texts.get(j));
          }
        }
      }
    }
    return found;
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
  public void text(double x, double y, String markup, Lettering lettering) {
    if (markup.isBlank()) {
      return;
    }
    double length = textWidth(markup, lettering);
    double cap = lettering.capHeightMm();
    double start =
        switch (lettering.along()) {
          case START -> 0;
          case MIDDLE -> -length / 2;
          case END -> -length;
        };
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
    Path2D shape = new Path2D.Double();
    double[][] corners = {
      {start, down}, {start + length, down}, {start + length, down - cap}, {start, down - cap}
    };
    for (int i = 0; i < 4; i++) {
      double px = x + corners[i][0] * c + corners[i][1] * s;
      double py = y - corners[i][0] * s + corners[i][1] * c;
      if (i == 0) {
        shape.moveTo(px, py);
      } else {
        shape.lineTo(px, py);
      }
    }
    shape.closePath();
    texts.add(markup);
    shapes.add(shape);
  }

  @Override
  public double textWidth(String markup, Lettering lettering) {
    Typeface face = lettering.style() == Lettering.Style.BOLD ? Typeface.SANS_BOLD : Typeface.SANS;
    double points = 0;
    for (Label.Part part : Label.parse(markup).parts()) {
      double size = lettering.sizePt() * (part.place() == Label.Place.BASE ? 1 : 0.72);
      points += face.width(part.text(), size);
    }
    return points * 25.4 / 72;
  }

  @Override
  public void clipped(double[] xy, Runnable drawing) {
    drawing.run();
  }

  @Override
  public void polyline(Pen pen, double... xy) {
    // Only text counts.
  }

  @Override
  public void polygon(Pen pen, Ink fill, double... xy) {
    // Only text counts.
  }

  @Override
  public void circle(Pen pen, Ink fill, double x, double y, double radius) {
    // Only text counts.
  }

  @Override
  public void arc(
      Pen pen, double x, double y, double radius, double startDegrees, double sweepDegrees) {
    // Only text counts.
  }
}
