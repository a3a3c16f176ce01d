package pilefolio.analysis.movement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class SettlementTroughTest {

  private static void assertTrough(
      TroughShape shape, double greatest, double[] distances, double[] settlements) {
    SettlementTrough trough = new SettlementTrough(shape, 10, greatest, greatest);
    for (int i = 0; i < distances.length; i++) {
      assertEquals(
          settlements[i],
          trough.settlementAt(distances[i]),
          1e-3 * Math.max(settlements[i], 1e-3),
          shape + " at " + distances[i]);
    }
  }

  // Shapes after Clough and O'Rourke (1990) and UFC 3-220-20, Eq. 2-5 and 2-6; ordinates by hand.
  private static final double[] AT = {0, 5, 7.5, 10, 12.5, 15, 20, 30};

  @Test
  void trianglesOfSandAndStiffClay() {
    assertTrough(
        TroughShape.SAND_TRIANGLE, 30, AT, new double[] {30, 22.5, 18.75, 15, 11.25, 7.5, 0, 0});
    assertTrough(
        TroughShape.STIFF_CLAY_TRIANGLE, 30, AT, new double[] {30, 25, 22.5, 20, 17.5, 15, 10, 0});
  }

  @Test
  void trapezoidsOfSoftClayEndWhereTheirAuthorsPutThem() {
    assertTrough(TroughShape.SOFT_CLAY_TO_2H, 50, AT, new double[] {50, 50, 50, 40, 30, 20, 0, 0});
    assertTrough(
        TroughShape.SOFT_CLAY_TO_1_5H,
        50,
        AT,
        new double[] {50, 50, 50, 33.3333, 16.6667, 0, 0, 0});
  }

  // Hsieh and Ou (1998): half at the wall, whole at H/2, zero at 4 H.
  @Test
  void concaveShape() {
    assertTrough(
        TroughShape.CONCAVE,
        40,
        new double[] {0, 5, 10, 20, 30, 40},
        new double[] {20, 40, 28, 4, 2, 0});
  }

  @Test
  void spandrelShapeHasNoStepAtTwoHeights() {
    double[] ratio = {0, 0.5, 1, 2, 3, 4};
    double[] share = {1, 0.550, 0.364, 0.101, 0.046, 0};
    for (int i = 0; i < ratio.length; i++) {
      assertEquals(share[i], TroughShape.SPANDREL.fraction(ratio[i]), 5e-4);
    }
    assertEquals(
        TroughShape.SPANDREL.fraction(2),
        TroughShape.SPANDREL.fraction(2 + 1e-9),
        5e-4,
        "the published coefficients meet within their digits");
  }

  @ParameterizedTest
  @EnumSource
  void areaIsTheIntegralOfTheShape(TroughShape shape) {
    int n = 400_000;
    double h = shape.reach() / n;
    double sum = 0;
    for (int i = 0; i < n; i++) {
      sum += shape.fraction((i + 0.5) * h) * h;
    }
    assertEquals(sum, shape.area(), 1e-5);
    assertEquals(0, shape.fraction(shape.reach() + 0.01));
  }

  @ParameterizedTest
  @EnumSource
  void horizontalMovementNeverGrowsAwayFromTheWall(TroughShape shape) {
    double before = 1;
    for (double r = 0; r < 5; r += 0.05) {
      double f = shape.horizontalFraction(r);
      assertTrue(f <= before + 5e-4, shape + " at " + r);
      assertTrue(f >= shape.fraction(r));
      before = f;
    }
  }

  @Test
  void settlementIsAShareOfTheDisplacementOfTheWall() {
    SettlementTrough trough =
        SettlementTrough.ofRatio(TroughShape.STIFF_CLAY_TRIANGLE, 8, 0.020, 0.75);
    assertEquals(0.015, trough.settlement(), 1e-12);
    assertEquals(0.020, trough.horizontalAt(0), 1e-12);
    assertEquals(24, trough.reach(), 1e-12);
  }

  // A wall that turns about its toe: 0.5 · 12 m · 20 mm = 0.12 m³/m; a triangle to 2 H of 8 m has
  // half of 16 m times its settlement.
  @Test
  void troughOfEqualVolume() {
    WallDeflection wall =
        new WallDeflection(
            List.of(new WallDeflection.Point(2, 0.020), new WallDeflection.Point(-10, 0)));
    assertEquals(0.12, wall.volume(), 1e-12);
    SettlementTrough trough = SettlementTrough.ofVolume(TroughShape.SAND_TRIANGLE, 8, wall);
    assertEquals(0.015, trough.settlement(), 1e-12);
    assertEquals(wall.volume(), trough.volume(), 1e-12);
    assertEquals(0.020, trough.horizontal(), 1e-12);
    assertEquals(2, wall.levelOfGreatest(), 1e-12);
  }

  @Test
  void aWallThatOnlyMovesBackwardGivesNoTrough() {
    WallDeflection wall =
        new WallDeflection(
            List.of(new WallDeflection.Point(2, -0.002), new WallDeflection.Point(-10, -0.001)));
    assertEquals(0, wall.greatest());
    assertEquals(0, SettlementTrough.ofVolume(TroughShape.SAND_TRIANGLE, 8, wall).settlement());
  }

  @Test
  void valuesThatMakeNoSenseAreRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> new SettlementTrough(TroughShape.CONCAVE, 0, 0.01, 0.01));
    assertThrows(
        IllegalArgumentException.class,
        () ->
            new WallDeflection(
                List.of(new WallDeflection.Point(0, 0), new WallDeflection.Point(1, 0))));
  }

  // EI = 60 000 kNm²/m, supports 3 m apart; by hand.
  @Test
  void systemStiffnessWithWaterAndWithGround() {
    assertEquals(75.51, SystemStiffness.of(60_000, 9.81, 3), 75.51e-3);
    assertEquals(41.15, SystemStiffness.of(60_000, 18, 3), 41.15e-3);
    assertThrows(IllegalArgumentException.class, () -> SystemStiffness.of(60_000, 18, 0));
  }

  @Test
  void zonesOfPeck() {
    assertEquals(PeckZone.I, PeckZone.of(0.01));
    assertEquals(PeckZone.II, PeckZone.of(0.015));
    assertEquals(PeckZone.III, PeckZone.of(0.021));
  }
}
