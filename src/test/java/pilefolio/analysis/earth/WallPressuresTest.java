package pilefolio.analysis.earth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class WallPressuresTest {
  private static final double NO_END = Double.NEGATIVE_INFINITY;
  private static final double DRY = -1000;

  private static DrainedStrength smooth(double c, double phiDeg) {
    return DrainedStrength.ofDegrees(c, phiDeg, 0, 0);
  }

  private static PressureDiagram behind(WallGround g, double toe) {
    return new WallPressures(g).behind(Mobilisation.ACTIVE, toe);
  }

  private static double thrust(PressureDiagram d) {
    double sum = 0;
    for (PressureSegment s : d.segments()) {
      sum +=
          (s.top().pressure() + s.bottom().pressure()) / 2 * (s.top().level() - s.bottom().level());
    }
    return sum;
  }

  private static PressureNode last(PressureDiagram d) {
    return d.segments().get(d.segments().size() - 1).bottom();
  }

  private static WallGround ground(List<SoilLayer> layers, double height, double water) {
    return WallGround.simple(
        new SoilProfile(layers),
        CoefficientMethod.RANKINE,
        Side.unloaded(0, water),
        Side.unloaded(-height, water));
  }

  // pa = Ka·γ·z − 2·c·√Ka: UFC 3-220-20 Eq. 4-6; numbers by hand.
  @Test
  void cohesiveActivePressureWithADryCrack() {
    WallGround g =
        ground(List.of(new SoilLayer("silt", 0, NO_END, 18, 20, smooth(10, 20))), 6, DRY);
    PressureDiagram d = behind(g, -6);
    assertEquals(2, d.segments().size());
    assertEquals(1.5868, d.segments().get(0).bottom().depth(), 1e-4);
    assertEquals(PressureNode.Limit.ZERO, d.segments().get(0).top().limit());
    assertEquals(38.947, last(d).pressure(), 38.947e-3);
    assertEquals(85.94, thrust(d), 85.94e-3);
  }

  // Unsupported vertical cut 4·su/γ: UFC 3-220-20 Eq. 2-1. With tension kept the thrust of a cut
  // of that height is zero.
  @Test
  void thrustVanishesAtTheHeightOfAnUnsupportedCut() {
    double height = 4 * 30.0 / 18;
    assertEquals(6.667, height, 6.667e-3);
    CohesionRule kept = new CohesionRule(CohesionRule.Tension.KEPT, 0);
    WallGround g =
        ground(
                List.of(new SoilLayer("clay", 0, NO_END, 18, 18, new UndrainedStrength(30, 0, 0))),
                height,
                DRY)
            .withRules(kept, kept);
    assertEquals(0, thrust(behind(g, -height)), 1e-9);
  }

  // Das, Principles of Foundation Engineering, 8th ed., Ex. 12.3 (pcf and ft; the book rounds Ka).
  @Test
  void twoLayersWithWater() {
    WallGround g =
        ground(
                List.of(
                    new SoilLayer("upper sand", 0, -10, 102, 102, smooth(0, 30)),
                    new SoilLayer("lower sand", -10, NO_END, 121, 121, smooth(0, 36))),
                20,
                -10)
            .withGammaWater(62.4);
    PressureDiagram d = behind(g, -20);
    assertEquals(340, d.segments().get(0).bottom().earth(), 340 * 3e-3);
    assertEquals(265.2, d.segments().get(1).top().earth(), 265.2 * 3e-3);
    assertEquals(417.6, last(d).earth(), 417.6 * 3e-3);
    assertEquals(624, last(d).u(), 1e-9);
    // By hand.
    assertEquals(8234, thrust(d), 8234 * 1e-3);
  }

  // Craig, Soil Mechanics, Ex. 6.1: 57.5 kN/m dry and 93.3 kN/m with water 2 m down (from memory).
  @Test
  void thrustWithRisingWater() {
    List<SoilLayer> sand = List.of(new SoilLayer("sand", 0, NO_END, 17, 20, smooth(0, 35)));
    assertEquals(57.5, thrust(behind(ground(sand, 5, DRY), -5)), 57.5 * 5e-3);
    assertEquals(93.3, thrust(behind(ground(sand, 5, -2).withGammaWater(9.8), -5)), 93.3 * 5e-3);
  }

  // K·q over the whole depth: UFC 3-220-20 Eq. 4-14; 10 kPa and Ka = 1/3 give 3.333 kPa.
  @Test
  void uniformSurcharge() {
    WallGround plain =
        ground(List.of(new SoilLayer("sand", 0, NO_END, 18, 20, smooth(0, 30))), 5, DRY);
    WallGround loaded =
        WallGround.simple(plain.profile(), plain.method(), new Side(0, DRY, 4, 6), plain.front());
    assertEquals(3.3333, behind(loaded, -5).segments().get(0).top().pressure(), 1e-4);
    assertEquals(
        3.3333, last(behind(loaded, -5)).pressure() - last(behind(plain, -5)).pressure(), 1e-4);
    // A variable load never adds to passive pressure: only the 4 kPa that stay count.
    assertEquals(
        12,
        new WallPressures(loaded)
            .behind(Mobilisation.PASSIVE, -5)
            .segments()
            .get(0)
            .top()
            .pressure(),
        1e-9);
  }

  // Factors 1.35 and 1.5 on the two loads: 1.35·Ka·4 + 1.5·Ka·6 = 4.8 kPa, by hand.
  @Test
  void factorsOnActions() {
    WallGround g =
        new WallGround(
            new SoilProfile(List.of(new SoilLayer("sand", 0, NO_END, 18, 20, smooth(0, 30)))),
            CoefficientMethod.RANKINE,
            new Side(0, -2, 4, 6),
            Side.unloaded(-5, -5),
            WaterFlow.HYDROSTATIC,
            10,
            CohesionRule.DRY,
            CohesionRule.DRY,
            new PressureFactors(1.35, 1.5, 1, 1, PressureFactors.DivisorOn.WHOLE_PASSIVE));
    assertEquals(4.8, behind(g, -5).segments().get(0).top().pressure(), 1e-9);
    // Bottom: 1.35·[(18·2 + 10·3)/3 + 30] + 4.8.
    assertEquals(1.35 * (22 + 30) + 4.8, last(behind(g, -5)).pressure(), 1e-9);
  }

  // By hand, su = 30, γ = 20: dry crack 3.0 m; water-filled crack to 2·su/(γ − γw) = 5.888 m.
  @Test
  void tensionCracksInUndrainedGround() {
    List<SoilLayer> clay =
        List.of(new SoilLayer("clay", 0, NO_END, 20, 20, new UndrainedStrength(30, 0, 0)));
    WallGround g = ground(clay, 8, DRY);
    assertEquals(3.0, behind(g, -8).segments().get(0).bottom().depth(), 1e-9);
    CohesionRule wet = new CohesionRule(CohesionRule.Tension.WATER_FILLED_CRACK, 0);
    PressureDiagram d = behind(g.withRules(wet, wet), -8);
    assertEquals(PressureNode.Limit.CRACK_WATER, d.segments().get(0).top().limit());
    assertEquals(60 / (20 - 9.81), d.segments().get(0).bottom().depth(), 1e-9);
    assertEquals(100, last(d).pressure(), 1e-9);
    // Minimum 5 kPa/m takes over above 2·su/(γ − 5) = 4 m.
    CohesionRule least = new CohesionRule(CohesionRule.Tension.DRY_CRACK, 5);
    PressureDiagram m = behind(g.withRules(least, least), -8);
    assertEquals(PressureNode.Limit.MINIMUM, m.segments().get(0).top().limit());
    assertEquals(4.0, m.segments().get(0).bottom().depth(), 1e-9);
    assertEquals(20, m.segments().get(0).bottom().pressure(), 1e-9);
  }

  // Net water pressure by hand, d1 = 6, d2 = 2 at the toe: u = 2·6·2/8·γw = 3·γw on both sides.
  @Test
  void seepageRoundTheToe() {
    WallGround g =
        WallGround.simple(
                new SoilProfile(List.of(new SoilLayer("sand", 0, NO_END, 18, 20, smooth(0, 32)))),
                CoefficientMethod.RANKINE,
                Side.unloaded(0, -2),
                Side.unloaded(-5, -6))
            .withFlow(WaterFlow.LINEAR_SEEPAGE);
    WallPressures p = new WallPressures(g);
    assertEquals(3 * 9.81, last(p.behind(Mobilisation.ACTIVE, -8)).u(), 1e-9);
    assertEquals(3 * 9.81, last(p.front(Mobilisation.PASSIVE, -8)).u(), 1e-9);
  }

  @Test
  void freeWaterInFrontLoadsTheGroundAndTheWall() {
    WallGround g =
        WallGround.simple(
            new SoilProfile(List.of(new SoilLayer("sand", 0, NO_END, 18, 20, smooth(0, 30)))),
            CoefficientMethod.RANKINE,
            Side.unloaded(0, -1),
            Side.unloaded(-5, -3));
    PressureDiagram d = new WallPressures(g).front(Mobilisation.PASSIVE, -6);
    assertEquals(-3, d.segments().get(0).top().level(), 0);
    assertEquals(2 * 9.81, d.segments().get(0).bottom().pressure(), 1e-9);
    // One metre down: 3·(20 − 9.81) earth and 3·9.81 water.
    assertEquals(3 * (20 - 9.81) + 3 * 9.81, last(d).pressure(), 1e-9);
  }

  // Every node repeats the printed line: K·σ'v ∓ Kc·c, on a profile of twelve layers.
  @Test
  void everyNodeOfTwelveLayersFollowsFromItsOwnNumbers() {
    List<SoilLayer> layers = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      Strength s =
          i % 3 == 2
              ? new UndrainedStrength(20 + 5 * i, 1.5, 0.5)
              : DrainedStrength.ofDegrees(i % 2 == 0 ? 0 : 4, 25 + i, 0.5, 0.5);
      layers.add(new SoilLayer("layer " + (i + 1), -i, -(i + 1), 17 + 0.1 * i, 19 + 0.1 * i, s));
    }
    WallGround g =
        WallGround.simple(
            new SoilProfile(layers),
            CoefficientMethod.EN1997_ANNEX_C2,
            new Side(0, -1.5, 5, 10),
            new Side(-4.2, -4.7, 0, 0));
    WallPressures p = new WallPressures(g);
    int nodes = 0;
    for (Mobilisation m : Mobilisation.values()) {
      int sign = m == Mobilisation.ACTIVE ? -1 : 1;
      for (PressureDiagram d : List.of(p.behind(m, -11.3), p.front(m, -11.3))) {
        double level = d.segments().get(0).top().level();
        for (PressureSegment s : d.segments()) {
          assertEquals(level, s.top().level(), 1e-12);
          level = s.bottom().level();
          for (PressureNode n : List.of(s.top(), s.bottom())) {
            double by = n.k() * (n.sigmaV() - n.u()) + sign * n.kc() * n.cohesion();
            assertEquals(by, n.earthUnlimited(), 1e-9);
            assertEquals(Math.max(0, by), n.earth(), 1e-9);
            nodes++;
          }
        }
        assertEquals(-11.3, level, 1e-12);
      }
    }
    assertTrue(nodes > 80, "nodes " + nodes);
  }

  @Test
  void groundThatDoesNotFitIsRefused() {
    SoilLayer a = new SoilLayer("a", 0, -3, 18, 20, smooth(0, 30));
    SoilLayer gap = new SoilLayer("b", -4, -9, 18, 20, smooth(0, 30));
    assertThrows(OutsideRange.class, () -> new SoilProfile(List.of(a, gap)));
    assertThrows(OutsideRange.class, () -> ground(List.of(a), 4, DRY));
    assertThrows(OutsideRange.class, () -> DrainedStrength.ofDegrees(0, 30, 1.1, 0));
  }
}
