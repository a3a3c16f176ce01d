package pilefolio.output.figure;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import pilefolio.submittal.figure.Mark;

/** Names levels at the right edge of a drawing, moved apart, with a leader from each level. */
final class LevelLabels {
  private LevelLabels() {}

  /**
   * Draws the labels.
   *
   * @param x edge of the drawing in mm
   * @param y place of a level in mm
   * @param top least y a label may have
   * @param bottom greatest y a label may have
   */
  static void draw(
      Canvas canvas, double x, double top, double bottom, List<Mark> marks, DoubleUnaryOperator y) {
    Lettering lettering = Lettering.SMALL.centred();
    List<Double> wanted = marks.stream().map(mark -> y.applyAsDouble(mark.at())).toList();
    List<Double> placed = Spread.apart(wanted, lettering.lineMm() * 1.05, top, bottom);
    for (int i = 0; i < marks.size(); i++) {
      double from = wanted.get(i);
      double to = placed.get(i);
      canvas.polyline(Pen.FINE, x, from, x + 1, from, x + 3, to, x + 4, to);
      canvas.text(x + 4.6, to, marks.get(i).label(), lettering);
    }
  }

  /** Room the labels need to the right of the edge, in mm. */
  static double width(Canvas canvas, List<Mark> marks) {
    return marks.stream()
            .mapToDouble(mark -> canvas.textWidth(mark.label(), Lettering.SMALL))
            .max()
            .orElse(-4.6)
        + 4.6;
  }
}
