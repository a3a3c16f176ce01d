package pilefolio.analysis.staged;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Closed forms of beams on elastic and elastoplastic foundations: after Hetényi, Beams on Elastic
 * Foundation, 1946 (elastic), Matlock and Reese 1960 (modulus growing with depth); the
 * elastoplastic head of a long wall by own derivation.
 */
class BeamOnSpringsTest {
  private static final double EI = 50_000;
  private static final double K = 20_000;
  private static final double LAMBDA = Math.pow(K / (4 * EI), 0.25);

  private static StageState solve(double length, double ei, SoilSide front, DirectLoad... loads) {
    return solve(length, ei, front, ToeCondition.FREE, 0.1, loads);
  }

  private static StageState solve(
      double length,
      double ei,
      SoilSide front,
      ToeCondition toe,
      double element,
      DirectLoad... loads) {
    StagedOutcome outcome =
        StagedAnalysis.of(
            new StagedWall(
                0,
                -length,
                element,
                toe,
                GroundMemory.NONE,
                1,
                List.of(
                    new WallStage(
                        "loaded", SoilSide.nothing(), front, 0, ei, List.of(), List.of(loads)))));
    StageState state = ((StagedOutcome.Converged) outcome).stages().get(0);
    assertTrue(state.balance().forceRatio() < 1e-6);
    assertTrue(state.balance().momentRatio() < 1e-6);
    return state;
  }

  private static void near(double expected, double actual, double share) {
    assertEquals(expected, actual, Math.abs(expected) * share);
  }

  @Test
  void longBeamWithForceAtItsEnd() {
    StageState s =
        solve(12 / LAMBDA, EI, SoilSide.uniform(SpringLaw.linear(K)), new DirectLoad.Force(0, 100));
    near(5.62341e-3, s.nodes().get(0).displacement(), 1e-4);
    near(57.331, s.greatestMoment().value(), 1e-4);
    near(-1.39666, s.greatestMoment().level(), 2e-3);
  }

  @Test
  void longBeamWithForceAndMomentAtItsEnd() {
    StageState s =
        solve(
            12 / LAMBDA,
            EI,
            SoilSide.uniform(SpringLaw.linear(K)),
            new DirectLoad.Force(0, 100),
            new DirectLoad.Moment(0, 150));
    near(10.36683e-3, s.nodes().get(0).displacement(), 1e-4);
    near(-8.49712e-3, s.nodes().get(0).rotation(), 1e-4);
  }

  @Test
  void endlessBeamWithForceInTheMiddle() {
    double half = 12 / LAMBDA;
    StageState s =
        solve(
            2 * half, EI, SoilSide.uniform(SpringLaw.linear(K)), new DirectLoad.Force(-half, 100));
    near(1.40585e-3, s.displacementAt(-half), 1e-4);
    near(-44.457, s.leastMoment().value(), 1e-4);
  }

  @ParameterizedTest
  @CsvSource({
    "4, 100, 0, 6.041525e-3, -1.756109e-3, -3.341611e-3",
    "4, 0, 150, 5.012416e-3, , -5.487557e-3",
    "8, 100, 0, 5.626888e-3, 0.095817e-3, -3.165269e-3",
    "8, 0, 150, 4.747904e-3, , -5.339230e-3"
  })
  void shortBeamWithFreeEnds(
      double length, double force, double moment, double y0, Double yEnd, double theta) {
    StageState s =
        solve(
            length,
            EI,
            SoilSide.uniform(SpringLaw.linear(K)),
            new DirectLoad.Force(0, force),
            new DirectLoad.Moment(0, moment));
    near(y0, s.nodes().get(0).displacement(), 1e-4);
    near(theta, s.nodes().get(0).rotation(), 1e-4);
    if (yEnd != null) {
      near(yEnd, s.nodes().get(s.nodes().size() - 1).displacement(), 1e-4);
    }
  }

  private static SoilSide growing(double perMetre) {
    return new SoilSide() {
      @Override
      public SpringLaw at(double level, double seenFrom) {
        return SpringLaw.linear(perMetre * -level);
      }

      @Override
      public List<Double> breaks() {
        return List.of();
      }
    };
  }

  @Test
  void modulusThatGrowsWithDepth() {
    double nh = 5_000;
    double t = Math.pow(EI / nh, 0.2);
    StageState force = solve(6 * t, EI, growing(nh), new DirectLoad.Force(0, 100));
    double y = EI / (100 * t * t * t) * force.nodes().get(0).displacement();
    double theta = EI / (100 * t * t) * force.nodes().get(0).rotation();
    // The published coefficients are rounded and were read off charts.
    near(2.435, y, 3e-3);
    near(-1.623, theta, 3e-3);
    near(0.772, force.greatestMoment().value() / (100 * t), 3e-3);
    near(1.335 * t, -force.greatestMoment().level(), 1e-2);
    StageState moment = solve(6 * t, EI, growing(nh), new DirectLoad.Moment(0, 100));
    near(1.623, EI / (100 * t * t) * moment.nodes().get(0).displacement(), 3e-3);
    near(-1.750, EI / (100 * t) * moment.nodes().get(0).rotation(), 3e-3);
  }

  @Test
  void headThatCannotTurnInGroundThatStiffensWithDepth() {
    // Turned upside down: the held toe is the head of the pile.
    double nh = 5_000;
    double t = Math.pow(EI / nh, 0.2);
    double length = 6 * t;
    SoilSide upward =
        new SoilSide() {
          @Override
          public SpringLaw at(double level, double seenFrom) {
            return SpringLaw.linear(nh * (level + length));
          }

          @Override
          public List<Double> breaks() {
            return List.of();
          }
        };
    StageState s =
        solve(length, EI, upward, ToeCondition.GUIDED, 0.1, new DirectLoad.Force(-length, 100));
    double y = s.nodes().get(s.nodes().size() - 1).displacement();
    near(0.93, EI / (100 * t * t * t) * y, 4e-3);
    near(0.93 * 100 * t, Math.abs(s.balance().toeMoment()), 4e-3);
  }

  @Test
  void rigidPileInEvenAndInGrowingModulus() {
    double stiff = 1e8;
    StageState even =
        solve(6, stiff, SoilSide.uniform(SpringLaw.linear(K)), new DirectLoad.Force(0, 100));
    near(4 * 100 / (K * 6.0), even.nodes().get(0).displacement(), 1e-3);
    assertEquals(0, even.displacementAt(-4), 5e-6);
    near(4 * 100 * 6 / 27.0, even.greatestMoment().value(), 1e-3);
    StageState growing = solve(6, stiff, growing(5_000), new DirectLoad.Force(0, 100));
    near(18 * 100 / (5_000 * 36.0), growing.nodes().get(0).displacement(), 1e-3);
    assertEquals(0, growing.displacementAt(-4.5), 2e-5);
  }

  @ParameterizedTest
  @CsvSource({
    "0, 53.3484, 3.00000e-3, 30.5853, 1.3967",
    "0.5, 80.0226, 5.53125e-3, 54.3659, 1.4613",
    "1, 106.6968, 11.50000e-3, 94.8683, 1.7783"
  })
  void longWallWhoseHeadTurnsPlastic(
      double alpha, double force, double y0, double moment, double depth) {
    double limit = 60;
    SoilSide side = SoilSide.uniform(new SpringLaw(0, -limit, limit, K, 0));
    StageState s = solve(12 / LAMBDA, EI, side, new DirectLoad.Force(0, force));
    near(y0, s.nodes().get(0).displacement(), 1e-3);
    double yield = limit / K;
    near(
        yield * (1 + alpha * (1 + alpha) + 2 * Math.pow(alpha, 3) / 3 + Math.pow(alpha, 4) / 6),
        s.nodes().get(0).displacement(),
        1e-3);
    near(-yield * LAMBDA * (1 + alpha), slope(s, alpha / LAMBDA), 1e-3);
    near(moment, s.greatestMoment().value(), 1e-3);
    near(-depth, s.greatestMoment().level(), 2e-3);
  }

  private static double slope(StageState s, double depth) {
    if (depth == 0) {
      return s.nodes().get(0).rotation();
    }
    double d = 1e-3;
    return (s.displacementAt(-depth - d) - s.displacementAt(-depth + d)) / (2 * d);
  }

  @Test
  void threeEqualSpansUnderEvenLoad() {
    double span = 4;
    double w = 25;
    List<ElasticSupport> supports =
        List.of(0.0, -span, -2 * span, -3 * span).stream()
            .map(l -> new ElasticSupport("at " + l, l, 1e8, 0, ElasticSupport.Action.BOTH_WAYS))
            .toList();
    WallStage placed =
        new WallStage("place", SoilSide.nothing(), SoilSide.nothing(), 0, EI, supports, List.of());
    WallStage loaded =
        new WallStage(
            "load",
            SoilSide.nothing(),
            SoilSide.nothing(),
            0,
            EI,
            supports,
            List.of(new DirectLoad.Pressure(0, -3 * span, w, w)));
    // Unsupported and unloaded, the wall stays where it is while the supports are placed.
    StageState s =
        StagedAnalysis.of(StagedWall.of(0, -3 * span, GroundMemory.NONE, List.of(placed, loaded)))
            .stages()
            .get(1);
    double[] share = {0.4, 1.1, 1.1, 0.4};
    for (int i = 0; i < 4; i++) {
      near(share[i] * w * span, s.supports().get(i).force(), 1e-3);
    }
    near(0.1 * w * span * span, s.greatestMoment().value(), 1e-3);
    near(-0.08 * w * span * span, s.leastMoment().value(), 2e-3);
  }
}
