package pilefolio.output.pdf.math;

import java.util.List;

/** Brackets drawn to a height, for content taller than a letter. */
final class Brackets {
  private Brackets() {}

  /**
   * A bracket.
   *
   * @param sign one of ( ) [ ] { } |
   * @param size letter size in points
   * @param bottom lower end, usually below 0
   * @param top upper end
   */
  static MathBox draw(String sign, double size, double bottom, double top) {
    double h = top - bottom;
    double pen = size * 0.052;
    double w = Math.min(size * 0.46, size * 0.26 + h * 0.035);
    return switch (sign) {
      case "(" -> round(w, size, bottom, top, false);
      case ")" -> round(w, size, bottom, top, true);
      case "[", "]" -> square(sign, size * 0.3, pen, size * 0.07, bottom, top);
      case "{" -> brace(size * 0.42, pen, bottom, top, false);
      case "}" -> brace(size * 0.42, pen, bottom, top, true);
      case "|" ->
          new MathBox(
              size * 0.2,
              top,
              -bottom,
              List.of(new MathBox.Strokes(pen, List.of(size * 0.1, bottom, size * 0.1, top))));
      default -> throw new IllegalArgumentException("no bracket " + sign);
    };
  }

  private static MathBox round(double w, double size, double bottom, double top, boolean mirror) {
    double h = top - bottom;
    double tip = w - size * 0.05;
    double edge = size * 0.05;
    double thick = size * 0.085;
    double outer = tip - (tip - edge) / 0.75;
    double inner = outer + thick / 0.75;
    double reach = h * 0.27;
    List<Double> xy =
        List.of(
            m(tip, w, mirror),
            top,
            m(outer, w, mirror),
            top - reach,
            m(outer, w, mirror),
            bottom + reach,
            m(tip, w, mirror),
            bottom,
            m(tip, w, mirror),
            bottom,
            m(tip + size * 0.028, w, mirror),
            bottom,
            m(tip + size * 0.028, w, mirror),
            bottom + size * 0.01,
            m(inner, w, mirror),
            bottom + reach,
            m(inner, w, mirror),
            top - reach,
            m(tip + size * 0.028, w, mirror),
            top - size * 0.01);
    return new MathBox(w, top, -bottom, List.of(new MathBox.Curve(0, xy)));
  }

  private static double m(double x, double w, boolean mirror) {
    return mirror ? w - x : x;
  }

  private static MathBox square(
      String sign, double w, double pen, double edge, double bottom, double top) {
    boolean mirror = "]".equals(sign);
    double back = m(edge + pen / 2, w, mirror);
    double front = m(w - edge, w, mirror);
    double t = top - pen / 2;
    double b = bottom + pen / 2;
    return new MathBox(
        w,
        top,
        -bottom,
        List.of(new MathBox.Strokes(pen, List.of(front, t, back, t, back, b, front, b))));
  }

  private static MathBox brace(double w, double pen, double bottom, double top, boolean mirror) {
    double mid = (top + bottom) / 2;
    double quarter = (top - bottom) / 4;
    double tip = m(w * 0.12, w, mirror);
    double spine = m(w * 0.5, w, mirror);
    double end = m(w * 0.88, w, mirror);
    double bend = Math.min(quarter, w * 0.9);
    List<Double> xy =
        List.of(
            end,
            top,
            spine,
            top,
            spine,
            top - bend * 0.4,
            spine,
            top - bend,
            spine,
            top - bend,
            spine,
            mid + bend,
            spine,
            mid + bend,
            spine,
            mid + bend * 0.4,
            spine,
            mid,
            tip,
            mid,
            spine,
            mid,
            spine,
            mid - bend * 0.4,
            spine,
            mid - bend,
            spine,
            mid - bend,
            spine,
            bottom + bend,
            spine,
            bottom + bend,
            spine,
            bottom + bend * 0.4,
            spine,
            bottom,
            end,
            bottom);
    return new MathBox(w, top, -bottom, List.of(new MathBox.Curve(pen, xy)));
  }
}
