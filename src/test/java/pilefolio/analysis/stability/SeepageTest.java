package pilefolio.analysis.stability;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import pilefolio.analysis.earth.OutsideRange;

class SeepageTest {
  private static final double WATER = 9.81;

  @Test
  void criticalGradient() {
    assertEquals(1.0, CriticalGradient.ofGrains(2.65, 0.65), 1e-12);
    assertEquals(0.9266, CriticalGradient.ofWeights(18.9, WATER), 1e-4);
  }

  /** Sheet pile in deep ground with the surface level on both sides: exit gradient h/(π·D). */
  @Test
  void levelGround() {
    StepSeepage seepage = StepSeepage.of(4, 4, 5);
    assertEquals(5 / (Math.PI * 4), seepage.exitGradient(), 1e-9);
    assertEquals(2.5, seepage.headAtTip(), 1e-9);
    assertEquals(2.354, CriticalGradient.ofWeights(19, WATER) / seepage.exitGradient(), 1e-3);
    assertEquals(0.35396, seepage.meanHeadUnderPrism() / 5, 1e-5);
    assertEquals(0.2852, seepage.atDistance(2).head() / 5, 1e-4);
  }

  /** The confocal closed form x = D·sinh u·tanh u, head = h·asin(1/cosh u)/π. */
  @Test
  void levelGroundPointByPoint() {
    StepSeepage seepage = StepSeepage.of(4, 4, 5);
    for (double u : new double[] {0.1, 0.4, 0.9}) {
      StepSeepage.Point p = seepage.atTipLevel(u);
      assertEquals(4 * Math.sinh(u) * Math.tanh(u), p.x(), 1e-8);
      assertEquals(5 * Math.asin(1 / Math.cosh(u)) / Math.PI, p.head(), 1e-8);
    }
  }

  /**
   * Second opinion for a step: finite differences of Laplace's equation on a wide section, with
   * another formulation and no mapping.
   */
  @Test
  void stepAgainstFiniteDifferences() {
    StepSeepage seepage = StepSeepage.of(4, 10, 6);
    SeepageGrid grid = new SeepageGrid(4, 10, 6, 0.5, 40, 40, 36);
    assertEquals(grid.headAtTip(), seepage.headAtTip(), 0.02 * 6);
    assertEquals(grid.meanHead(2), seepage.meanHeadUnderPrism(), 0.02 * 6);
    assertTrue(seepage.headAtTip() > 0.35 * 6 && seepage.headAtTip() < 0.5 * 6);
  }

  /** Clay just below the toe chokes the flow: the mean head under the prism is smaller. */
  @Test
  void clayBelowTheToeIsOnTheSafeSide() {
    SeepageGrid choked = new SeepageGrid(4, 10, 6, 0.5, 40, 40, 11);
    assertTrue(choked.meanHead(2) < StepSeepage.of(4, 10, 6).meanHeadUnderPrism());
  }

  /** Between walls eight times as far apart as the toe is deep the head is a tenth more. */
  @Test
  void widthOfTheExcavation() {
    double wide = new SeepageGrid(4, 10, 6, 0.5, 40, 40, 36).meanHead(2);
    double guarded = new SeepageGrid(4, 10, 6, 0.5, 40, 16, 36).meanHead(2);
    double narrow = new SeepageGrid(4, 10, 6, 0.5, 40, 3, 36).meanHead(2);
    assertEquals(wide, guarded, 0.1 * wide);
    assertTrue(narrow > 1.2 * wide, narrow + " " + wide);
  }

  @Test
  void stepFulfilsItsOwnEquations() {
    StepSeepage seepage = StepSeepage.of(3, 9, 6);
    double v = seepage.tipAngleRad();
    double b = seepage.shift();
    assertEquals(3, seepage.scale() * (Math.sin(v) - b * v), 1e-9);
    assertEquals(9, seepage.scale() * (Math.sin(v) + b * (Math.PI - v)), 1e-9);
    assertEquals(1.5, seepage.atDistance(1.5).x(), 1e-9);
  }

  @Test
  void noEmbedmentNoSeepageSolution() {
    assertThrows(OutsideRange.class, () -> StepSeepage.of(0, 4, 5));
    assertThrows(OutsideRange.class, () -> StepSeepage.of(4, 3, 5));
  }

  @Test
  void prism() {
    double exact = StepSeepage.of(4, 4, 5).meanHeadUnderPrism();
    assertEquals(2.1173, new HeavePrism(4, 19, WATER, exact).factor(), 1e-3);
    assertEquals(2.4981, new HeavePrism(4, 19, WATER, 1.5).factor(), 1e-3);
    assertEquals(1.8736, new HeavePrism(4, 19, WATER, 2.0).factor(), 1e-3);
    assertEquals(1.4989, new HeavePrism(4, 19, WATER, 2.5).factor(), 1e-3);
  }

  /** EN 1997-1, HYD: the two forms of the condition do not ask for the same. */
  @Test
  void twoFormsOfTheCondition() {
    assertEquals(
        26.49 / 33.08, new HeavePrism(4, 19, WATER, 2.0).utilisationByForces(1.35, 0.9), 1e-3);
    assertTrue(new HeavePrism(4, 19, WATER, 2.5).utilisationByForces(1.35, 0.9) > 1);
    HeavePrism mild = new HeavePrism(4, 19, WATER, 1.5);
    assertTrue(mild.utilisationByForces(1.35, 0.9) < 1);
    assertEquals(72.84 / 68.40, mild.utilisationByStress(1.35, 0.9), 1e-3);
  }

  @Test
  void plug() {
    PlugUplift plug = PlugUplift.of(List.of(new double[] {4, 19}), 8.5, WATER);
    assertEquals(0.9114, plug.factor(), 1e-4);
    assertEquals(1.219, plug.utilisation(1.0, 0.9), 1e-3);
  }
}
