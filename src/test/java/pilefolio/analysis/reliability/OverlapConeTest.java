package pilefolio.analysis.reliability;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pilefolio.analysis.reliability.OverlapCone.Case;

/** Piles of 600 at 450 with 25 at the guide wall; arithmetic worked by hand. */
class OverlapConeTest {

  @ParameterizedTest
  @CsvSource({
    "75, 100.0, -33.3, -113.3, -166.7, -300.0, 3.75, 7.73, 2.8125",
    "100, 100.0, 0.0, -60.0, -100.0, -200.0, 5.00, 10.31, 3.75",
    "150, 100.0, 33.3, -6.7, -33.3, -100.0, 7.50, 15.46, 5.625",
    "200, 100.0, 50.0, 20.0, 0.0, -50.0, 10.00, 20.62, 7.50",
  })
  void overlapWithDepth(
      double n,
      double at0,
      double at5,
      double at8,
      double at10,
      double at15,
      double lost,
      double lostRss,
      double keeps25) {
    OverlapCone cone = new OverlapCone(150, 25, n);
    assertEquals(at0, cone.overlapAt(Case.BOTH_APART, 0), 0.05);
    assertEquals(at5, cone.overlapAt(Case.BOTH_APART, 5), 0.05);
    assertEquals(at8, cone.overlapAt(Case.BOTH_APART, 8), 0.05);
    assertEquals(at10, cone.overlapAt(Case.BOTH_APART, 10), 0.05);
    assertEquals(at15, cone.overlapAt(Case.BOTH_APART, 15), 0.05);
    assertEquals(lost, cone.depthWith(Case.BOTH_APART, 0), 0.0005);
    assertEquals(lostRss, cone.depthWith(Case.ROOT_SUM_SQUARE, 0), 0.005);
    assertEquals(keeps25, cone.depthWith(Case.BOTH_APART, 25), 0.0005);
  }

  @ParameterizedTest
  @CsvSource({"75, 4.875", "100, 6.50", "150, 9.75", "200, 13.00", "300, 19.50"})
  void largerOverlap(double n, double lost) {
    assertEquals(lost, new OverlapCone(180, 25, n).depthWith(Case.BOTH_APART, 0), 0.0005);
  }

  @Test
  void everyDepthIsWhereItsOverlapIsLeft() {
    OverlapCone cone = new OverlapCone(150, 25, 150);
    for (Case which : Case.values()) {
      double depth = cone.depthWith(which, 20);
      assertEquals(20, cone.overlapAt(which, depth), 1e-9, which.name());
    }
  }

  @Test
  void withoutGuideWallContactIsLostAtTheTop() {
    OverlapCone cone = new OverlapCone(150, 75, 100);
    assertEquals(0, cone.depthWith(Case.BOTH_APART, 0));
    assertEquals(7.5, cone.depthWith(Case.ONE_PERFECT, 0), 1e-9);
    assertEquals(7.5, cone.depthWith(Case.ROOT_SUM_SQUARE, 0), 1e-9);
    assertEquals(0, new OverlapCone(-10, 0, 100).depthWith(Case.ROOT_SUM_SQUARE, 0));
    assertThrows(IllegalArgumentException.class, () -> new OverlapCone(150, 25, 0));
  }
}
