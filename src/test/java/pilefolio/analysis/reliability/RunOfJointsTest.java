package pilefolio.analysis.reliability;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

class RunOfJointsTest {
  private static final double SIGMA = new PileSpread(12.5, 5).at(10);

  /** Numbers found outside this code by the same recursion and by counting random walls. */
  @Test
  void fortyJoints() {
    RunOfJoints run = RunOfJoints.of(40, 150, SIGMA);
    assertEquals(0.79184, run.expectedOpen(), 5e-6);
    assertEquals(0.55777, run.anyOpen(), 5e-6);
    assertEquals(0.5506, run.independent(), 5e-5);
    assertTrue(run.gridChange() < 1e-9, "grid change " + run.gridChange());
  }

  @Test
  void oneAndTwoJointsAreTheClosedForms() {
    double one = JointOpening.alongWall(150, SIGMA);
    double both = JointOpening.bothOfTwo(150, SIGMA);
    assertEquals(one, RunOfJoints.of(1, 150, SIGMA).anyOpen(), 1e-9);
    assertEquals(2 * one - both, RunOfJoints.of(2, 150, SIGMA).anyOpen(), 1e-9);
  }

  /**
   * With no overlap every joint is open unless the positions fall in order, so the chance that none
   * is open is one in (N + 1) factorial.
   */
  @Test
  void noOverlapIsTheChanceOfAnOrderedList() {
    assertEquals(1 - 1.0 / 2, RunOfJoints.of(1, 0, 30).anyOpen(), 1e-8);
    assertEquals(1 - 1.0 / 6, RunOfJoints.of(2, 0, 30).anyOpen(), 1e-8);
    assertEquals(1 - 1.0 / 120, RunOfJoints.of(4, 0, 30).anyOpen(), 1e-8);
  }

  @Test
  void agreesWithCountedWalls() {
    Random random = new Random(20270412);
    int walls = 200_000;
    int open = 0;
    for (int w = 0; w < walls; w++) {
      double last = random.nextGaussian() * 60;
      boolean any = false;
      for (int j = 0; j < 12; j++) {
        double next = random.nextGaussian() * 60;
        any |= next - last > 140;
        last = next;
      }
      open += any ? 1 : 0;
    }
    double counted = open / (double) walls;
    double expected = RunOfJoints.of(12, 140, 60).anyOpen();
    double error = Math.sqrt(expected * (1 - expected) / walls);
    assertEquals(expected, counted, 4 * error);
  }

  @Test
  void veryLargeAndNegativeOverlap() {
    assertEquals(0, RunOfJoints.of(40, 3000, 30).anyOpen(), 1e-12);
    assertEquals(1, RunOfJoints.of(40, -300, 30).anyOpen(), 1e-9);
  }
}
