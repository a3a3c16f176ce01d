package pilefolio.analysis.seepage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class FlowNetTest {

  private static FlowProblem deepGround(double d, double h) {
    return FlowProblem.wide(List.of(PermeableLayer.isotropic(0, -40 * d, 1e-5)), 0, h, 0, 0, -d);
  }

  /**
   * A single wall in deep uniform ground, level on both sides: confocal conics, x = D·sinh u·tanh
   * u, cos v = 1/cosh u, head (π/2 − v)/π·h; exit gradient h/(πD), mean excess head at the level of
   * the toe 0.35396·h over D/2. Own derivation from the exact solution.
   */
  @Test
  void confocalConics() {
    double d = 4;
    double h = 5;
    double exit = h / (Math.PI * d);
    double mean = 0.35396 * h;
    FlowNet usual = FlowNet.solve(deepGround(d, h));
    assertEquals(exit, usual.exitGradient(), 0.005 * exit);
    assertEquals(mean, usual.meanExcessHeadAtToe(d / 2), 0.002 * mean);
    assertEquals(h / 2, usual.headAtToe(), 0.002 * h);
    FlowNet fine = FlowNet.solve(deepGround(d, h), 2);
    assertEquals(exit, fine.exitGradient(), 0.0015 * exit);
    assertEquals(mean, fine.meanExcessHeadAtToe(d / 2), 0.0007 * mean);
    assertTrue(
        Math.abs(exit - fine.exitGradient()) < Math.abs(exit - usual.exitGradient()),
        "half the spacing is nearer to the exact gradient");
  }

  /** Head on the wall itself: at depth y it is h·(1 − acos(y/D)/π) behind, by the same solution. */
  @Test
  void headAlongTheWall() {
    FlowNet net = FlowNet.solve(deepGround(4, 5));
    for (FlowNet.Head p : net.behind()) {
      double v = Math.acos(Math.max(-1, p.level() / 4));
      assertEquals(5 * (1.5 - v / Math.PI), p.head(), 0.05, "level " + p.level());
    }
  }

  @Test
  void whatEntersLeaves() {
    FlowNet net =
        FlowNet.solve(
            FlowProblem.wide(
                List.of(
                    PermeableLayer.isotropic(2, -3, 1e-4),
                    new PermeableLayer(-3, -5, 1e-6, 2e-7),
                    PermeableLayer.isotropic(-5, -14, 5e-5)),
                -1,
                -1,
                -4,
                -4,
                -8));
    assertEquals(net.inflow(), net.outflow(), 1e-9 * net.inflow());
    assertTrue(net.outflow() > 0);
  }

  /**
   * Two boundaries far apart in one permeability, wall to half the depth of the layer, level on
   * both sides: the form factor of flow is K'/(2K) of modulus sin(πs/2T), which is 1/2 for s = T/2.
   * By conformal mapping, after Harr, Groundwater and Seepage, from memory.
   */
  @Test
  void wallToHalfTheDepthOfALayer() {
    double k = 1e-5;
    FlowNet net =
        FlowNet.solve(
            FlowProblem.wide(List.of(PermeableLayer.isotropic(0, -10, k)), 0, 3, 0, 0, -5), 2);
    assertEquals(0.5 * k * 3, net.outflow(), 0.005 * 0.5 * k * 3);
  }

  /** Ten times the permeability, ten times the flow and the same heads. */
  @Test
  void headsDoNotDependOnTheSizeOfPermeability() {
    FlowNet one = FlowNet.solve(deepGround(3, 2));
    FlowProblem p = one.problem();
    FlowNet ten =
        FlowNet.solve(
            FlowProblem.wide(List.of(PermeableLayer.isotropic(0, p.base(), 1e-4)), 0, 2, 0, 0, -3));
    assertEquals(10 * one.outflow(), ten.outflow(), 1e-9 * ten.outflow());
    assertEquals(one.exitGradient(), ten.exitGradient(), 1e-9);
  }

  /** A tight layer at the toe keeps the head above it: the water behind is nearly at rest. */
  @Test
  void aTightLayerTakesTheHead() {
    FlowNet net =
        FlowNet.solve(
            FlowProblem.wide(
                List.of(
                    PermeableLayer.isotropic(0, -6, 1e-4),
                    PermeableLayer.isotropic(-6, -9, 1e-8),
                    PermeableLayer.isotropic(-9, -12, 1e-4)),
                0,
                4,
                0,
                0,
                -8));
    for (FlowNet.Head p : net.behind()) {
      if (p.level() > -5.9) {
        assertEquals(4, p.head(), 0.02);
      }
    }
  }

  @Test
  void wallsThatWaterDoesNotPassUnderAreRefused() {
    List<PermeableLayer> sand = List.of(PermeableLayer.isotropic(0, -10, 1e-5));
    assertThrows(IllegalArgumentException.class, () -> FlowProblem.wide(sand, 0, 0, -4, -4, -3));
    assertThrows(IllegalArgumentException.class, () -> FlowProblem.wide(sand, 0, 0, -4, -4, -10));
    assertThrows(IllegalArgumentException.class, () -> FlowProblem.wide(sand, 1, 1, -4, -4, -8));
    assertThrows(IllegalArgumentException.class, () -> PermeableLayer.isotropic(0, -1, 0));
  }
}
