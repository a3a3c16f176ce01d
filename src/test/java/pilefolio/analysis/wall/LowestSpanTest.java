package pilefolio.analysis.wall;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.List;
import org.junit.jupiter.api.Test;
import pilefolio.analysis.earth.CoefficientMethod;
import pilefolio.analysis.earth.DrainedStrength;
import pilefolio.analysis.earth.Side;
import pilefolio.analysis.earth.SoilLayer;
import pilefolio.analysis.earth.SoilProfile;
import pilefolio.analysis.earth.Strength;
import pilefolio.analysis.earth.UndrainedStrength;
import pilefolio.analysis.earth.WallGround;

class LowestSpanTest {

  private static WallLoading loading(Strength strength) {
    return new WallLoading(
        WallGround.simple(
            new SoilProfile(List.of(new SoilLayer("a", 0, -100, 18, 20, strength))),
            CoefficientMethod.RANKINE,
            Side.unloaded(0, -100),
            Side.unloaded(-9, -100)));
  }

  /**
   * Dry sand, φ' = 30°, 9 m deep, lowest support at 6 m: moments of the closed pressures about the
   * support, own derivation: K_a·γ·[6·a²/2 + a³/3] = K_p·γ·d²/2·(3 + 2·d/3), a = 3 + d.
   */
  @Test
  void momentsAboutTheLowestSupport() {
    Equilibrium e =
        assertInstanceOf(
            Equilibrium.class,
            new LowestSpan(-6).solve(loading(DrainedStrength.ofDegrees(0, 30, 0, 0))));
    double d = e.theoreticalEmbedment();
    double a = 3 + d;
    double driving = 18.0 / 3 * (6 * a * a / 2 + a * a * a / 3);
    double holding = 18.0 * 3 * d * d / 2 * (3 + 2 * d / 3);
    assertEquals(driving, holding, 1e-6 * driving);
    double force = 18.0 / 3 * (6 * a + a * a / 2) - 18.0 * 3 * d * d / 2;
    assertEquals(force, e.supportForce().orElseThrow(), 1e-6 * force);
    assertEquals(0, e.statics().forceResidual(), 1e-9);
    assertEquals(0, e.statics().momentResidual(), 1e-6);
    assertEquals(0, e.statics().momentAt(-6), 1e-9);
  }

  /** γH − 2s_u above 2s_u: no depth balances. */
  @Test
  void softClayGivesNoDepth() {
    NoEquilibrium none =
        assertInstanceOf(
            NoEquilibrium.class,
            new LowestSpan(-6).solve(loading(new UndrainedStrength(25, 0, 0))));
    assertEquals(NoEquilibrium.Cause.UNDRAINED_GROUND_TOO_WEAK, none.cause());
  }

  @Test
  void aSupportBelowTheExcavationIsRefused() {
    NoEquilibrium none =
        assertInstanceOf(
            NoEquilibrium.class,
            new LowestSpan(-9.5).solve(loading(DrainedStrength.ofDegrees(0, 30, 0, 0))));
    assertEquals(NoEquilibrium.Cause.SUPPORT_OFF_WALL, none.cause());
  }
}
