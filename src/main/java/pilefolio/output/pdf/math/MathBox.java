package pilefolio.output.pdf.math;

import java.util.ArrayList;
import java.util.List;
import pilefolio.output.pdf.face.Typeface;

/**
 * A laid out piece of a formula. Lengths are points; the origin lies on the base line at the left,
 * y points up.
 *
 * @param width advance
 * @param height extent above the base line
 * @param depth extent below the base line, positive
 * @param marks what to draw
 */
public record MathBox(double width, double height, double depth, List<Mark> marks) {

  /** Something to draw. */
  public sealed interface Mark {
    /** The same mark moved. */
    Mark moved(double dx, double dy);
  }

  /**
   * Text starting at a point.
   *
   * @param x start
   * @param y base line
   * @param face font
   * @param sizePt size
   * @param text characters
   */
  public record Glyphs(double x, double y, Typeface face, double sizePt, String text)
      implements Mark {
    @Override
    public Mark moved(double dx, double dy) {
      return new Glyphs(x + dx, y + dy, face, sizePt, text);
    }
  }

  /**
   * A filled bar.
   *
   * @param x left
   * @param y bottom
   * @param width width
   * @param height height
   */
  public record Bar(double x, double y, double width, double height) implements Mark {
    @Override
    public Mark moved(double dx, double dy) {
      return new Bar(x + dx, y + dy, width, height);
    }
  }

  /**
   * A path: first a start point, then curves of three points each.
   *
   * @param pen line width; 0 fills the path instead
   * @param xy x, y, x, y, ...
   */
  public record Curve(double pen, List<Double> xy) implements Mark {
    /** Copies the points. */
    public Curve {
      xy = List.copyOf(xy);
    }

    @Override
    public Mark moved(double dx, double dy) {
      List<Double> moved = new ArrayList<>(xy.size());
      for (int i = 0; i < xy.size(); i++) {
        moved.add(xy.get(i) + (i % 2 == 0 ? dx : dy));
      }
      return new Curve(pen, moved);
    }
  }

  /**
   * Straight strokes.
   *
   * @param pen line width
   * @param xy x, y, x, y, ...
   */
  public record Strokes(double pen, List<Double> xy) implements Mark {
    /** Copies the points. */
    public Strokes {
      xy = List.copyOf(xy);
    }

    @Override
    public Mark moved(double dx, double dy) {
      return new Strokes(pen, ((Curve) new Curve(pen, xy).moved(dx, dy)).xy());
    }
  }

  /** Nothing. */
  public static final MathBox EMPTY = new MathBox(0, 0, 0, List.of());

  /** Copies the marks. */
  public MathBox {
    marks = List.copyOf(marks);
  }

  /** Height and depth together. */
  public double extent() {
    return height + depth;
  }

  static MathBox space(double width) {
    return new MathBox(width, 0, 0, List.of());
  }

  /** Collects boxes placed at points into one. */
  static final class Builder {
    private final List<Mark> marks = new ArrayList<>();
    private double width;
    private double height;
    private double depth;

    Builder put(MathBox box, double x, double y) {
      for (Mark mark : box.marks()) {
        marks.add(mark.moved(x, y));
      }
      width = Math.max(width, x + box.width());
      height = Math.max(height, box.height() + y);
      depth = Math.max(depth, box.depth() - y);
      return this;
    }

    Builder draw(Mark mark) {
      marks.add(mark);
      return this;
    }

    Builder extend(double atLeastWidth, double atLeastHeight, double atLeastDepth) {
      width = Math.max(width, atLeastWidth);
      height = Math.max(height, atLeastHeight);
      depth = Math.max(depth, atLeastDepth);
      return this;
    }

    double width() {
      return width;
    }

    MathBox build() {
      return new MathBox(width, height, depth, marks);
    }
  }
}
