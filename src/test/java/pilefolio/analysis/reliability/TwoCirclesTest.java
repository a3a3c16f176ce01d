package pilefolio.analysis.reliability;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

/** Plane geometry: the limits are elementary, the numbers worked by hand to the digits shown. */
class TwoCirclesTest {

  @Test
  void equalPilesAtThreeQuarterSpacing() {
    TwoCircles pair = new TwoCircles(600, 600, 450);
    assertEquals(396.863, pair.chord(), 0.0005);
    assertEquals(40_798.06, pair.commonArea(), 0.005);
    assertEquals(537.656, pair.averageThickness(), 0.0005);
    assertEquals(28.859, 100 * 2 * pair.commonArea() / (Math.PI * 300 * 300), 0.0005);
  }

  @Test
  void otherSizesInMillimetresAndInches() {
    TwoCircles metric = new TwoCircles(880, 880, 700);
    assertEquals(180, metric.overlap(), 1e-9);
    assertEquals(533.292, metric.chord(), 0.0005);
    assertEquals(65_430.2, metric.commonArea(), 0.05);
    TwoCircles inches = new TwoCircles(36, 36, 28);
    assertEquals(22.627, inches.chord(), 0.0005);
    assertEquals(123.645, inches.commonArea(), 0.0005);
  }

  @Test
  void movedNeighbours() {
    assertMoved(60, 0, 90.0, 316.07);
    assertMoved(60, 80, 83.76, 305.78);
    assertMoved(0, 120, 134.27, 378.29);
    assertMoved(100, 100, 40.98, 217.94);
    assertEquals(516.24, TwoCircles.moved(600, 600, 450, 60, 80).distance(), 0.005);
    assertEquals(8.91, Math.toDegrees(TwoCircles.chordTurn(450, 60, 80)), 0.005);
  }

  private static void assertMoved(double along, double across, double overlap, double chord) {
    TwoCircles pair = TwoCircles.moved(600, 600, 450, along, across);
    assertEquals(overlap, pair.overlap(), 0.005);
    assertEquals(chord, pair.chord(), 0.005);
  }

  @Test
  void limitsOfContact() {
    TwoCircles same = new TwoCircles(600, 600, 0);
    assertEquals(600, same.chord());
    assertEquals(Math.PI * 300 * 300, same.commonArea(), 1e-6);
    TwoCircles touching = new TwoCircles(600, 600, 600);
    assertEquals(0, touching.chord());
    assertEquals(0, touching.commonArea());
    assertEquals(TwoCircles.Contact.APART, touching.contact());
    TwoCircles inside = new TwoCircles(900, 300, 200);
    assertEquals(TwoCircles.Contact.ENCLOSED, inside.contact());
    assertThrows(IllegalStateException.class, inside::chord);
    assertThrows(IllegalStateException.class, inside::commonArea);
    assertThrows(IllegalArgumentException.class, () -> new TwoCircles(0, 600, 100));
  }

  @Test
  void unequalPilesAgreeWithCountedArea() {
    TwoCircles pair = new TwoCircles(600, 880, 600);
    double step = 0.5;
    double counted = 0;
    for (double x = -300 + step / 2; x < 300; x += step) {
      double first = Math.sqrt(300 * 300 - x * x);
      double square = 440 * 440 - (x - 600) * (x - 600);
      counted += square > 0 ? 2 * Math.min(first, Math.sqrt(square)) * step : 0;
    }
    assertEquals(counted, pair.commonArea(), 1e-4 * counted);
  }
}
