package pilefolio.analysis.staged;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import pilefolio.analysis.earth.CoefficientMethod;
import pilefolio.analysis.earth.DrainedStrength;
import pilefolio.analysis.earth.Side;
import pilefolio.analysis.earth.SoilLayer;
import pilefolio.analysis.earth.SoilProfile;
import pilefolio.analysis.earth.UndrainedStrength;
import pilefolio.analysis.earth.WallGround;
import pilefolio.analysis.earth.WallPressures;

/** Finite elements and finite differences on the same staged wall. */
class SecondFormulationTest {
  private static final double EI = 80_000;
  private static final double TOE = -13;

  private static WallStage stage(String name, double dig, double water, ElasticSupport... s) {
    SoilProfile profile =
        new SoilProfile(
            List.of(
                new SoilLayer("fill", 0, -3, 18, 19, DrainedStrength.ofDegrees(0, 30, 0, 0)),
                new SoilLayer("sand", -3, -9, 18.5, 20, DrainedStrength.ofDegrees(0, 34, 0, 0)),
                new SoilLayer(
                    "clay",
                    -9,
                    Double.NEGATIVE_INFINITY,
                    19,
                    19,
                    new UndrainedStrength(70, 2, 0))));
    WallPressures p =
        new WallPressures(
            WallGround.simple(
                profile,
                CoefficientMethod.RANKINE,
                new Side(0, -4, 10, 0),
                Side.unloaded(dig, water)));
    return new WallStage(
        name,
        DiagramSide.behind(p, TOE, SecondFormulationTest::springs),
        DiagramSide.front(p, TOE, SecondFormulationTest::springs),
        dig,
        EI,
        List.of(s),
        List.of());
  }

  private static LayerSprings springs(SoilLayer layer) {
    return switch (layer.name()) {
      case "fill" -> new LayerSprings(0.5, 8_000);
      case "sand" -> new LayerSprings(0.44, 20_000);
      default -> new LayerSprings(0.7, 12_000);
    };
  }

  @Test
  void lawsOfLayeredGround() {
    WallStage s = stage("dig", -7, -7, new ElasticSupport[0]);
    SpringLaw sand = s.behind().at(-6, -6);
    double effective = 10 + 3 * 18 + 18.5 + 2 * (20 - 9.81);
    assertEquals(0.44 * effective, sand.atRest(), 1e-9);
    assertEquals(effective * Math.pow(Math.tan(Math.toRadians(28)), 2), sand.active(), 1e-9);
    assertEquals(2 * 9.81, sand.water(), 1e-9);
    assertEquals(20_000, sand.modulus(), 0);
    SpringLaw clay = s.front().at(-11, -11);
    double total = 2 * 20 + 2 * 19;
    assertEquals(Math.max(0, total - 2 * 74), clay.active(), 1e-9);
    assertEquals(total + 2 * 74, clay.passive(), 1e-9);
    assertEquals(0.7 * (total - 4 * 9.81) + 4 * 9.81, clay.atRest(), 1e-9);
    assertEquals(SpringLaw.NOTHING, s.front().at(-6.9, -6.9));
    assertTrue(s.behind().at(-9, -8.999).modulus() > s.behind().at(-9, -9.001).modulus());
  }

  @Test
  void anchoredWallInLayeredGround() {
    ElasticSupport anchor =
        ElasticSupport.inclined(
            "A", -2, 25_000, Math.toRadians(20), 2.5, 300, ElasticSupport.Action.ONE_WAY);
    List<StageState> states =
        StagedAnalysis.of(
                new StagedWall(
                    0,
                    TOE,
                    0.1,
                    ToeCondition.FREE,
                    GroundMemory.NONE,
                    1,
                    List.of(
                        stage("dig 2.5 m", -2.5, -4),
                        stage("anchor", -2.5, -4, anchor),
                        stage("dig 7 m", -7, -7, anchor))))
            .stages();
    assertEquals(3, states.size());

    double lockOff = 300 * Math.cos(Math.toRadians(20)) / 2.5;
    double[][] coarse = differences(states, 130, lockOff, anchor.stiffness());
    double[][] fine = differences(states, 260, lockOff, anchor.stiffness());
    for (int s = 0; s < 3; s++) {
      compare(states.get(s), coarse[s], fine[s]);
    }
    int c = new FiniteDifferenceWall(0, TOE, 130).point(-2);
    double moved = 2 * (fine[2][2 * c] - fine[1][2 * c]) - (coarse[2][c] - coarse[1][c]);
    double force = lockOff + anchor.stiffness() * moved;
    assertEquals(force, states.get(2).supports().get(0).force(), 1e-3 * force);
  }

  private static double[][] differences(
      List<StageState> states, int intervals, double lockOff, double stiffness) {
    FiniteDifferenceWall wall = new FiniteDifferenceWall(0, TOE, intervals);
    int at = wall.point(-2);
    double[] one = wall.solve(states.get(0).stage(), Map.of(), Map.of());
    double[] two = wall.solve(states.get(1).stage(), Map.of(at, lockOff), Map.of());
    double[] three =
        wall.solve(
            states.get(2).stage(),
            Map.of(),
            Map.of(at, new double[] {stiffness, two[at], lockOff}));
    return new double[][] {one, two, three};
  }

  // The differences are of first order at free ends; two step lengths extrapolate to none.
  private static void compare(StageState s, double[] coarse, double[] fine) {
    double most = Math.abs(s.greatestDisplacement().value());
    FiniteDifferenceWall wall = new FiniteDifferenceWall(0, TOE, coarse.length - 1);
    FiniteDifferenceWall half = new FiniteDifferenceWall(0, TOE, fine.length - 1);
    double moment = Math.abs(s.governingMoment().value());
    for (int i = 0; i < coarse.length; i++) {
      double level = wall.level(i);
      String where = s.stage().name() + " at " + level;
      assertEquals(2 * fine[2 * i] - coarse[i], s.displacementAt(level), 2e-3 * most, where);
      if (i == 0 || i == coarse.length - 1) {
        continue;
      }
      double second = 2 * half.moment(fine, 2 * i, EI) - wall.moment(coarse, i, EI);
      for (WallNode n : s.nodes()) {
        if (Math.abs(level - n.level()) < 1e-9) {
          assertEquals(second, n.moment(), 5e-3 * moment, where);
        }
      }
    }
  }
}
