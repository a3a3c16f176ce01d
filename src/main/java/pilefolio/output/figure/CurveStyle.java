package pilefolio.output.figure;

import pilefolio.submittal.figure.Curve;

/** How the curves of all plots are drawn; told apart by their line even in a grey copy. */
final class CurveStyle {
  private CurveStyle() {}

  static Pen pen(Curve.Role role) {
    return switch (role) {
      case MAIN -> Pen.of(Palette.ACCENT, 0.45);
      case SECOND -> Pen.of(Palette.INK, 0.3).dashed(2.2, 0.9);
      case THIRD -> Pen.of(Palette.GREY, 0.3).dashed(0.7, 0.7);
      case LIMIT -> Pen.of(Palette.WARNING, 0.3).chain();
      case WATER -> Pen.of(Palette.WATER, 0.35);
    };
  }

  static double[] values(Curve curve) {
    double[] xy = new double[curve.points().size() * 2];
    for (int i = 0; i < curve.points().size(); i++) {
      xy[2 * i] = curve.points().get(i).x();
      xy[2 * i + 1] = curve.points().get(i).y();
    }
    return xy;
  }
}
