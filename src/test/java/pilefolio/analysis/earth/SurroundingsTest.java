package pilefolio.analysis.earth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import pilefolio.analysis.load.PressurePolyline;

class SurroundingsTest {
  private static final WallGround SAND =
      WallGround.simple(
          new SoilProfile(
              List.of(
                  new SoilLayer("sand", 0, -30, 18, 20, DrainedStrength.ofDegrees(0, 30, 0, 0)))),
          CoefficientMethod.RANKINE,
          Side.unloaded(0, -30),
          Side.unloaded(-6, -30));

  private static double thrust(WallGround g, double toe) {
    double sum = 0;
    for (PressureSegment s : new WallPressures(g).behind(Mobilisation.ACTIVE, toe).segments()) {
      sum +=
          (s.top().pressure() + s.bottom().pressure()) / 2 * (s.top().level() - s.bottom().level());
    }
    return sum;
  }

  // By hand: 10 kPa from -1 to -3 m adds 20 kN/m, whatever the ground.
  @Test
  void localLoadsAddTheirForce() {
    PressurePolyline load =
        new PressurePolyline(
            List.of(new PressurePolyline.Point(-1, 10), new PressurePolyline.Point(-3, 10)));
    WallGround loaded = SAND.with(Surroundings.NONE.withLoads(load, PressurePolyline.NONE));
    assertEquals(thrust(SAND, -8) + 20, thrust(loaded, -8), 1e-9);
  }

  // Mononobe-Okabe above the excavation: half of γ·H² times the increase of the coefficient.
  @Test
  void earthquakeAddsTheIncreaseOfTheCoefficient() {
    WallGround quake = SAND.with(Surroundings.NONE.withEarthquake(new Earthquake(0.1, 0)));
    double increase = 0.39655 - 1.0 / 3;
    assertEquals(thrust(SAND, -6) + increase * 0.5 * 18 * 36, thrust(quake, -6), 0.01);
  }

  // By hand: K·cos β of Rankine for 30° and 10° is 0.3495·cos 10°.
  @Test
  void slopeBehindRaisesActivePressure() {
    WallGround slope = SAND.with(Surroundings.NONE.withSlope(Math.toRadians(10)));
    double k = 0.3495 * Math.cos(Math.toRadians(10));
    assertEquals(k * 0.5 * 18 * 36, thrust(slope, -6), 0.05);
  }

  // By hand: own level -2 m of the layer gives 4·9.81 kPa of water at -6 m.
  @Test
  void aLayerMayHaveItsOwnWaterLevel() {
    WallGround own =
        SAND.with(Surroundings.NONE.withWater(WaterField.ofLayers(Map.of("sand", -2.0))));
    List<PressureSegment> all = new WallPressures(own).behind(Mobilisation.ACTIVE, -6).segments();
    assertEquals(4 * 9.81, all.get(all.size() - 1).bottom().u(), 1e-9);
  }

  // By hand: none left at -6 m, all of 40 kPa at -7 m, half in between.
  @Test
  void softenedGroundRegainsItsStrength() {
    SoilProfile clay =
        new SoilProfile(
            List.of(new SoilLayer("clay", 0, -20, 18, 18, new UndrainedStrength(40, 0, 0))));
    SoilProfile soft = clay.softenedBelow(-6, 1, 0);
    assertEquals(20, soft.below(-6.5).cohesionAt(-6.5), 1e-9);
    assertEquals(40, soft.below(-7.5).cohesionAt(-7.5), 1e-9);
    assertThrows(OutsideRange.class, () -> clay.softenedBelow(-6, 1, 1.1));
  }

  // By hand: base 1 + 2·1.5 = 4 m, a sixth of it 0.667 m; no more than half the height.
  @Test
  void bermRaisesTheExcavation() {
    assertEquals(4.0 / 6, RaisedExcavation.by(1.5, 1, 2), 1e-12);
    assertEquals(0.5, RaisedExcavation.by(1, 6, 2), 1e-12);
  }
}
