package pilefolio.analysis.wall;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import pilefolio.analysis.earth.CoefficientMethod;
import pilefolio.analysis.earth.DrainedStrength;
import pilefolio.analysis.earth.PressureFactors;
import pilefolio.analysis.earth.Side;
import pilefolio.analysis.earth.SoilLayer;
import pilefolio.analysis.earth.SoilProfile;
import pilefolio.analysis.earth.UndrainedStrength;
import pilefolio.analysis.earth.WallGround;

/** Grounds that several tests share; ground surface at level zero. */
final class WallCases {
  static final double NO_END = Double.NEGATIVE_INFINITY;
  static final double DRY = -1000;

  private WallCases() {}

  static WallGround uniformSand(double phiDeg, double gamma, double height) {
    return smoothWall(
        List.of(
            new SoilLayer(
                "sand", 0, NO_END, gamma, gamma, DrainedStrength.ofDegrees(0, phiDeg, 0, 0))),
        height,
        DRY);
  }

  static WallGround uniformClay(double su, double gamma, double height) {
    return smoothWall(
        List.of(new SoilLayer("clay", 0, NO_END, gamma, gamma, new UndrainedStrength(su, 0, 0))),
        height,
        DRY);
  }

  static WallGround smoothWall(List<SoilLayer> layers, double height, double water) {
    return WallGround.simple(
        new SoilProfile(layers),
        CoefficientMethod.RANKINE,
        Side.unloaded(0, water),
        Side.unloaded(-height, water));
  }

  static WallLoading loading(WallGround ground) {
    return new WallLoading(ground);
  }

  static WallLoading loading(WallGround ground, double passiveDivisor) {
    return new WallLoading(ground.withFactors(PressureFactors.passiveDividedBy(passiveDivisor)));
  }

  static Equilibrium solved(WallMethod method, WallLoading loading) {
    WallOutcome outcome = method.solve(loading);
    if (outcome instanceof NoEquilibrium n) {
      throw new AssertionError(n.reason());
    }
    Equilibrium e = (Equilibrium) outcome;
    double scale = Math.max(1, e.statics().greatestShear().shear());
    assertEquals(0, e.statics().forceResidual(), 1e-8 * scale, "sum of forces");
    assertEquals(0, e.statics().momentResidual(), 1e-7 * scale, "sum of moments");
    return e;
  }

  static void near(double expected, double actual, double relative) {
    assertEquals(expected, actual, Math.abs(expected) * relative);
  }
}
