package pilefolio.analysis.wall;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pilefolio.analysis.wall.WallCases.loading;
import static pilefolio.analysis.wall.WallCases.near;
import static pilefolio.analysis.wall.WallCases.solved;
import static pilefolio.analysis.wall.WallCases.uniformClay;
import static pilefolio.analysis.wall.WallCases.uniformSand;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pilefolio.analysis.earth.ActingWidth;
import pilefolio.analysis.earth.DrainedStrength;
import pilefolio.analysis.earth.OutsideRange;
import pilefolio.analysis.earth.PassiveWidth;
import pilefolio.analysis.earth.PressureFactors;
import pilefolio.analysis.earth.UndrainedStrength;
import pilefolio.analysis.earth.WallGround;

class SoldierPileTest {
  private static final double SPACING = 2.4;
  private static final double HOLE = 0.6;

  private static WallLoading soldiers(WallGround ground, PassiveWidth rule, double divisor) {
    ActingWidth width = ActingWidth.piles(SPACING, HOLE, rule);
    return loading(ground.withFactors(PressureFactors.passiveDividedBy(divisor).on(width)));
  }

  // Height 3 m, γ 18.85, φ 34°, dry, hole 0.6 m every 2.4 m, moments about the toe. The polynomial
  // for the depth written out and solved by hand, moments for one pile.
  @ParameterizedTest
  @CsvSource({
    "THREE_WIDTHS,1.0,2.2004,2.6405,1.0782,100.78",
    "THREE_WIDTHS,1.5,2.6791,3.2149,1.3554,112.50",
    "ARCHING,1.0,2.3057,2.7668,1.1387,103.32",
    "ARCHING,1.5,2.8138,3.3766,1.4341,115.87"
  })
  void cantileverInDrySand(
      PassiveWidth rule, double divisor, double depth, double built, double zero, double moment) {
    Equilibrium e =
        solved(new SimplifiedCantilever(1.2), soldiers(uniformSand(34, 18.85, 3), rule, divisor));
    near(depth, e.theoreticalEmbedment(), 1e-3);
    near(built, e.requiredEmbedment(), 1e-3);
    near(-3 - zero, e.statics().greatest().level(), 1e-3);
    near(moment, SPACING * e.statics().greatest().moment(), 1e-3);
  }

  // Without gaps nothing changes, whatever the rule.
  @Test
  void pilesThatTouchAreAWall() {
    WallGround g = uniformSand(34, 18.85, 3);
    ActingWidth touching = ActingWidth.piles(HOLE, HOLE, PassiveWidth.ARCHING);
    Equilibrium e =
        solved(
            new SimplifiedCantilever(1), loading(g.withFactors(PressureFactors.NONE.on(touching))));
    near(
        solved(new SimplifiedCantilever(1), loading(g)).theoreticalEmbedment(),
        e.theoreticalEmbedment(),
        1e-12);
  }

  // Three widths of 0.6 m at a spacing of 1.2 m are the spacing: passive as a wall, active half.
  @Test
  void neverMoreThanTheSpacing() {
    ActingWidth width = ActingWidth.piles(1.2, HOLE, PassiveWidth.THREE_WIDTHS);
    DrainedStrength sand = DrainedStrength.ofDegrees(0, 34, 0, 0);
    assertEquals(1.2, width.passiveWidth(sand), 1e-12);
    assertEquals(0.5, width.own(), 1e-12);
  }

  // 0.08·34 = 2.72; 0.08·40 = 3.2 is cut to 3; undrained ground arches by its low end, 1.
  @Test
  void archingFactor() {
    assertEquals(2.72, PassiveWidth.ARCHING.factor(DrainedStrength.ofDegrees(0, 34, 0, 0)), 1e-12);
    assertEquals(3, PassiveWidth.ARCHING.factor(DrainedStrength.ofDegrees(0, 40, 0, 0)), 1e-12);
    assertEquals(1, PassiveWidth.ARCHING.factor(new UndrainedStrength(60, 0, 0)), 1e-12);
  }

  // Net pressure of clay just below 1.5 widths, φ = 0, s_u 60, γ 18, 3 m: behind b·(γ·z − 2·s_u),
  // cut at zero, in front 3·b·(γ·(z − 3) + 2·s_u); nothing in front above.
  @Test
  void clayJustBelowTheExcavationDoesNotHelp() {
    WallLoading clay = soldiers(uniformClay(60, 18, 3), PassiveWidth.THREE_WIDTHS, 1);
    double cut = -3 - 1.5 * HOLE;
    assertEquals(0, clay.acting(-8).justAbove(cut), 1e-9);
    near(-3 * HOLE / SPACING * (18 * 1.5 * HOLE + 120), clay.acting(-8).justBelow(cut), 1e-9);
  }

  // Water drained to the excavation in front, 1 m below ground behind: below the excavation its
  // difference acts on the pile alone.
  @Test
  void waterActsOnThePile() {
    WallGround g = uniformSand(34, 18.85, 3);
    WallGround wet =
        new WallGround(
            g.profile(),
            g.method(),
            pilefolio.analysis.earth.Side.unloaded(0, -1),
            pilefolio.analysis.earth.Side.unloaded(-3, -3),
            g.flow(),
            g.gammaWater(),
            g.ruleBehind(),
            g.ruleFront(),
            g.factors().on(ActingWidth.piles(SPACING, HOLE, PassiveWidth.OWN_WIDTH)));
    WallLoading whole = loading(wet.withFactors(PressureFactors.NONE));
    double ratio = HOLE / SPACING;
    near(ratio * whole.acting(-6).justAbove(-5), loading(wet).acting(-6).justAbove(-5), 1e-9);
    near(whole.acting(-6).justAbove(-2), loading(wet).acting(-6).justAbove(-2), 1e-9);
  }

  // The pair below the pivot of a cantilever: passive behind on its width, active in front on its.
  @Test
  void reversedPair() {
    WallLoading l = soldiers(uniformSand(34, 18.85, 3), PassiveWidth.THREE_WIDTHS, 1);
    double ka = Math.pow(Math.tan(Math.toRadians(28)), 2);
    double behind = 18.85 * 6 / ka * 3 * HOLE / SPACING;
    double front = 18.85 * 3 * ka * HOLE / SPACING;
    near(behind - front, l.reversed(-6).justAbove(-6), 1e-9);
  }

  @Test
  void wideOnesAreRefused() {
    assertThrows(OutsideRange.class, () -> ActingWidth.piles(0.5, 0.6, PassiveWidth.THREE_WIDTHS));
  }

  // Equations of Reese, Cox and Koop (1974) from memory, worked by hand: φ 35°, γ 19, width 0.6 m,
  // K_0 0.4; beside them three widths with K_p.
  @ParameterizedTest
  @CsvSource({"1,95.42,613.2,126.2", "2,303.7,1226.5,252.4", "4,1058.9,2453.0,504.8"})
  void sandBeforeASinglePile(double depth, double wedge, double flow, double three) {
    PileInSand p = new PileInSand(Math.toRadians(35), 19, 0.6, 0.4);
    near(wedge, p.wedge(depth), 5e-3);
    near(flow, p.flowAround(depth), 5e-3);
    double kp = Math.pow(Math.tan(Math.toRadians(62.5)), 2);
    near(three, 3 * 0.6 * kp * 19 * depth, 5e-3);
    assertTrue(p.resistance(depth) == p.wedge(depth), "the wedge governs near the surface");
  }
}
