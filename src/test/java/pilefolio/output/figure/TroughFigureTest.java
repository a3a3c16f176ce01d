package pilefolio.output.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import pilefolio.submittal.figure.Curve;
import pilefolio.submittal.figure.Curve.Point;
import pilefolio.submittal.figure.TroughData;
import pilefolio.submittal.figure.TroughData.Beside;

/** Labels of the settlement trough stand clear of each other however close neighbours stand. */
class TroughFigureTest {

  @Test
  void labelsOfCloseNeighboursStandClear() {
    TroughData data =
        new TroughData(
            "trough-T",
            "Settlement behind run T.",
            "Distance from the wall (m)",
            "Settlement (mm)",
            List.of(
                new Curve("stage 2", Curve.Role.SECOND, List.of(new Point(0, 4), new Point(12, 0))),
                new Curve("stage 3", Curve.Role.MAIN, List.of(new Point(0, 9), new Point(20, 0)))),
            List.of(
                new Beside("Cable in the footway, 8.1 mm", false, 2, 2, 2, 8.1),
                new Beside("Sewer of clay pipes, 7.9 mm", false, 2.4, 2.4, 2.4, 7.9),
                new Beside("House at the corner, 7.2 mm", true, 4, 13, 4, 7.2),
                new Beside("Shed beyond the yard, 0.4 mm", true, 19, 22, 19, 0.4)),
            22);
    TroughFigure figure = new TroughFigure(data);
    TextBoxes boxes = new TextBoxes(figure.widthMm(), figure.heightMm());
    figure.draw(boxes);
    assertEquals(List.of(), boxes.overlaps());
    assertTrue(figure.heightMm() < 120, "leaves room for a caption");
  }
}
