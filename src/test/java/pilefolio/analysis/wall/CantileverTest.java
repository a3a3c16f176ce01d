package pilefolio.analysis.wall;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pilefolio.analysis.wall.WallCases.NO_END;
import static pilefolio.analysis.wall.WallCases.loading;
import static pilefolio.analysis.wall.WallCases.near;
import static pilefolio.analysis.wall.WallCases.smoothWall;
import static pilefolio.analysis.wall.WallCases.solved;
import static pilefolio.analysis.wall.WallCases.uniformClay;
import static pilefolio.analysis.wall.WallCases.uniformSand;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pilefolio.analysis.earth.CohesionRule;
import pilefolio.analysis.earth.DrainedStrength;
import pilefolio.analysis.earth.PressureFactors;
import pilefolio.analysis.earth.SoilLayer;
import pilefolio.analysis.earth.UndrainedStrength;
import pilefolio.analysis.earth.WallGround;

class CantileverTest {
  private static final FourForceCantilever ABRUPT =
      new FourForceCantilever(FourForceCantilever.Change.ABRUPT);
  private static final FourForceCantilever STRAIGHT =
      new FourForceCantilever(FourForceCantilever.Change.STRAIGHT_LINE);
  private static final CohesionRule TENSION = new CohesionRule(CohesionRule.Tension.KEPT, 0);

  // Closed form d/h = 1/[(Kp/(F·Ka))^(1/3) − 1], by hand.
  @ParameterizedTest
  @CsvSource({"1,0.92585", "1.5,1.22381", "2,1.53618"})
  void simplifiedInDrySand(double factor, double ratio) {
    Equilibrium e = solved(new SimplifiedCantilever(1), loading(uniformSand(30, 18, 4), factor));
    near(4 * ratio, e.theoreticalEmbedment(), 1e-5);
  }

  // By hand: d 3.7034, 1.2·d 4.4441, zero shear 2 m down, Mmax γ·h³/8 = 144, toe force 192.29.
  @Test
  void simplifiedInDrySandMomentsAndForces() {
    Equilibrium e = solved(new SimplifiedCantilever(1.2), loading(uniformSand(30, 18, 4)));
    near(3.7034, e.theoreticalEmbedment(), 1e-4);
    near(4.4441, e.requiredEmbedment(), 1e-4);
    near(-6.0, e.statics().greatest().level(), 1e-6);
    near(144.0, e.statics().greatest().moment(), 1e-6);
    near(192.29, e.toeForce().orElseThrow(), 1e-4);
  }

  // The same wall with net pressure along a straight line to the toe, by hand: 4.0168.
  @Test
  void straightLineInDrySand() {
    Equilibrium e = solved(STRAIGHT, loading(uniformSand(30, 18, 4)));
    near(4.0168, e.theoreticalEmbedment(), 1e-4);
    near(144.0, e.statics().greatest().moment(), 1e-6);
  }

  // Das, Principles of Foundation Engineering, 8th ed., Ex. 14.1 (7th ed. Ex. 9.1): D 4.7411 below
  // the point of zero net pressure 0.6609 m down, Mmax 209.57 as recomputed in a public test set;
  // the book finds 5.46 m by trial.
  @Test
  void sandWithWater() {
    WallGround g =
        smoothWall(
            List.of(
                new SoilLayer(
                    "sand", 0, NO_END, 15.9, 19.33, DrainedStrength.ofDegrees(0, 32, 0, 0))),
            5,
            -2);
    Equilibrium e = solved(STRAIGHT, loading(g));
    near(0.6609 + 4.7411, e.theoreticalEmbedment(), 2e-3);
    near(5.46, e.theoreticalEmbedment(), 1.5e-2);
    near(209.57, e.statics().greatest().moment(), 2e-3);
    near(58.38, e.statics().pressure().above(-5.66098).force(), 2e-3);
    near(2.230, e.statics().pressure().above(-5.66098).momentAbout(-5.66098) / 58.376, 2e-3);
  }

  // Das, 8th ed., Ex. 14.4 (7th ed. Ex. 9.3), from memory: D 2.13 m, Mmax 103.52; recomputed 2.1318
  // and 103.65. The method keeps tension in the clay. It takes buoyant weight above the clay and
  // leaves the water, equal on both sides, out; the weight of the clay itself cancels.
  @Test
  void sandOverClay() {
    DrainedStrength sand = DrainedStrength.ofDegrees(0, 32, 0, 0);
    double buoyant = 19.33 - 9.81;
    WallGround g =
        smoothWall(
                List.of(
                    new SoilLayer("sand", 0, -2, 15.9, 15.9, sand),
                    new SoilLayer("buoyant sand", -2, -5, buoyant, buoyant, sand),
                    new SoilLayer("clay", -5, NO_END, 18, 18, new UndrainedStrength(47, 0, 0))),
                5,
                WallCases.DRY)
            .withRules(TENSION, TENSION);
    Equilibrium e = solved(STRAIGHT, loading(g));
    near(2.1318, e.theoreticalEmbedment(), 3e-3);
    near(103.65, e.statics().greatest().moment(), 3e-3);
    near(103.52, e.statics().greatest().moment(), 3e-3);
    near(1.1695, e.pivotLevel().orElseThrow() - e.toeLevel(), 3e-3);
  }

  // Closed form by hand (method after Das, §14.7, from memory): D 3.2371, Mmax 53.365. Dry crack
  // behind, tension kept in front below the pivot.
  @Test
  void whollyInClay() {
    WallGround g = uniformClay(35, 18, 6).withRules(CohesionRule.DRY, TENSION);
    Equilibrium e = solved(STRAIGHT, loading(g));
    near(3.2371, e.theoreticalEmbedment(), 1e-3);
    near(53.365, e.statics().greatest().moment(), 1e-3);
    near(40.111, e.statics().pressure().above(-6).force(), 1e-3);
    near(0.4534, e.pivotLevel().orElseThrow() - e.toeLevel(), 1e-3);
  }

  @Test
  void tooWeakClayIsAnAnswerNotAnError() {
    NoEquilibrium n =
        assertInstanceOf(NoEquilibrium.class, ABRUPT.solve(loading(uniformClay(27, 18, 6))));
    assertEquals(NoEquilibrium.Cause.UNDRAINED_GROUND_TOO_WEAK, n.cause());
    assertTrue(n.reason().contains("108.0 kPa"), n.reason());
    assertInstanceOf(Equilibrium.class, ABRUPT.solve(loading(uniformClay(27.5, 18, 6))));
  }

  @Test
  void profileThatEndsTooEarlyIsNamed() {
    WallGround g =
        smoothWall(
            List.of(new SoilLayer("sand", 0, -7, 18, 20, DrainedStrength.ofDegrees(0, 30, 0, 0))),
            4,
            WallCases.DRY);
    NoEquilibrium n = assertInstanceOf(NoEquilibrium.class, ABRUPT.solve(loading(g)));
    assertEquals(NoEquilibrium.Cause.PROFILE_ENDS, n.cause());
  }

  // Smith, Elements of Soil Mechanics, 9th ed. (2014), Exercise 8.4: pivot 4.04 and toe 4.53 m
  // below
  // the over-dug level by a spreadsheet solver; exact 4.0679 and 4.5511.
  @Test
  void fourForcesApproachOneCombinationOne() {
    WallGround g =
        uniformSand(29, 19.2, 4)
            .overExcavatedBy(0.4)
            .withFactors(
                new PressureFactors(1.35, 1.5, 1.35, 1, PressureFactors.DivisorOn.WHOLE_PASSIVE));
    Equilibrium e = solved(ABRUPT, loading(g));
    double pivotDepth = e.excavationLevel() - e.pivotLevel().orElseThrow();
    near(4.0679, pivotDepth, 1e-3);
    near(4.5511, e.theoreticalEmbedment(), 1e-3);
    near(4.04, pivotDepth, 1e-2);
    near(4.53, e.theoreticalEmbedment(), 1e-2);
    near(4.292, solved(new SimplifiedCantilever(1.2), loading(g)).theoreticalEmbedment(), 1e-3);
    near(5.150, solved(new SimplifiedCantilever(1.2), loading(g)).requiredEmbedment(), 1e-3);
  }

  // The same wall, combination 2: tan φ divided by 1.25; by hand 5.3818 and 6.0331.
  @Test
  void fourForcesApproachOneCombinationTwo() {
    double phi = Math.toDegrees(Math.atan(Math.tan(Math.toRadians(29)) / 1.25));
    Equilibrium e = solved(ABRUPT, loading(uniformSand(phi, 19.2, 4).overExcavatedBy(0.4)));
    near(5.3818, e.excavationLevel() - e.pivotLevel().orElseThrow(), 1e-3);
    near(6.0331, e.theoreticalEmbedment(), 1e-3);
  }

  // The reserve found at a toe must lead back to that toe.
  @Test
  void passiveReserveLeadsBackToTheToe() {
    WallGround g = uniformSand(32, 19, 4);
    for (WallMethod m : List.of(ABRUPT, STRAIGHT, new SimplifiedCantilever(1))) {
      double f = PassiveReserve.at(loading(g), m, -10.5).orElseThrow();
      assertTrue(f > 1.2, "reserve " + f);
      near(6.5, solved(m, loading(g, f)).theoreticalEmbedment(), 1e-6);
    }
  }

  @Test
  void utilisationComparesEmbedments() {
    Equilibrium e = solved(new SimplifiedCantilever(1.2), loading(uniformSand(30, 18, 4)));
    assertEquals(1.0, e.utilisation(-4 - 4.4441), 1e-4);
    assertEquals(0.5, e.utilisation(-4 - 8.8882), 1e-4);
  }
}
