package pilefolio.analysis.apparent;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import pilefolio.analysis.earth.OutsideRange;
import pilefolio.analysis.earth.Rankine;

class EnvelopeTest {

  /** Das, Principles of Foundation Engineering, 7th ed., Example 10.2: 26.95 kPa. */
  @Test
  void sandAfterTerzaghiAndPeck() {
    ApparentEnvelope e = StrutEnvelopes.sand(0, -9, 17, Rankine.active(Math.toRadians(35)));
    assertEquals(26.95, e.ordinate(), 0.001 * 26.95);
    assertEquals(26.95 * 9, e.force(), 0.001 * 242.55);
    assertEquals(e.force(), e.pressure().force(), 1e-9);
  }

  /** Das, 7th ed., Example 10.1: γH/c = 3.6, 0.3γH = 37.8 kPa. */
  @Test
  void stiffClayAfterTerzaghiAndPeck() {
    assertEquals(3.6, ClayClass.stabilityNumber(18, 7, 35), 1e-9);
    assertEquals(ClayClass.STIFF, ClayClass.of(3.6));
    ApparentEnvelope e = StrutEnvelopes.stiffClay(0, -7, 18, 0.3);
    assertEquals(37.8, e.ordinate(), 1e-9);
    assertEquals(37.8 * 5.25, e.pressure().force(), 1e-9);
    assertEquals(0.5 * 37.8, e.at(-0.875), 1e-9);
    assertThrows(OutsideRange.class, () -> StrutEnvelopes.stiffClay(0, -7, 18, 0.45));
  }

  /** From memory of FHWA-IF-99-015, section 5.2 (after Henkel 1971); own arithmetic. */
  @Test
  void softClayWithTheGroundBelowTheBase() {
    assertEquals(7.0, ClayClass.stabilityNumber(17.5, 10, 25), 1e-9);
    assertEquals(ClayClass.SOFT, ClayClass.of(7.0));
    double k = DeepSeated.coefficient(175, 25, 25, 0.5);
    assertEquals(0.80435, k, 1e-3 * 0.80435);
    assertEquals(703.8, k / 2 * 17.5 * 100, 0.7);
    assertEquals(0.42857, StrutEnvelopes.softClayCoefficient(7, 1), 1e-5);
    assertEquals(0.77143, StrutEnvelopes.softClayCoefficient(7, 0.4), 1e-5);
    assertEquals(0.80435 * 175, StrutEnvelopes.softClay(0, -10, 17.5, k).ordinate(), 0.15);
    assertEquals(0.22, DeepSeated.coefficient(100, 16.6, 400, 0), 0.2);
    assertThrows(OutsideRange.class, () -> DeepSeated.coefficient(100, 25, 25, 0.5));
  }

  /** A stable base adds nothing, and the lower bound of the soft diagram is 0.3γH. */
  @Test
  void lowerBounds() {
    assertEquals(0, DeepSeated.term(175, 50, 0.5), 0);
    assertEquals(0.3 * 180, StrutEnvelopes.softClay(0, -10, 18, 0.05).ordinate(), 1e-9);
  }

  /**
   * Two anchor levels in sand: formulas of FHWA-IF-99-015 from memory, statics checked, own
   * arithmetic; and the ordinate as AASHTO LRFD writes it.
   */
  @Test
  void trapezoidOfManyLevels() {
    double kA = Rankine.active(Math.toRadians(33));
    double load = AnchorTrapezoid.sandLoad(18, 10, kA);
    assertEquals(344.92, load, 0.002 * 344.92);
    ApparentEnvelope e = AnchorTrapezoid.holding(0, -10, List.of(-2.5, -6.25), load);
    assertEquals(43.568, e.ordinate(), 0.002 * 43.568);
    assertEquals(load, e.force(), 1e-9);
    assertEquals(load, e.pressure().force(), 1e-9);
    ApparentEnvelope lrfd =
        AnchorTrapezoid.holding(
            0, -10, List.of(-2.5, -6.25), AnchorTrapezoid.sandLoadLrfd(18, 10, kA));
    assertEquals(44.69, lrfd.ordinate(), 0.002 * 44.69);
    assertEquals(kA * 18 * 100 / (15 - 1.25 - 1.875), lrfd.ordinate(), 1e-9);
  }

  /** One anchor level: TL/(⅔H) whatever its level. */
  @Test
  void trapezoidOfOneLevel() {
    ApparentEnvelope e = AnchorTrapezoid.holding(0, -9, List.of(-3.0), 300);
    assertEquals(300 / 6.0, e.ordinate(), 1e-9);
    assertEquals(2, e.topRamp(), 1e-9);
    assertEquals(4, e.bottomRamp(), 1e-9);
    assertEquals(300, e.pressure().force(), 1e-9);
  }

  @Test
  void aSupportBelowTheExcavationIsRefused() {
    assertThrows(
        OutsideRange.class, () -> AnchorTrapezoid.holding(0, -9, List.of(-3.0, -9.5), 300));
  }

  /**
   * log ρ for a wall of 14.447 m, E = 207 000 MPa; constant from memory of Das, 8th ed., section
   * 14.12, own arithmetic.
   */
  @Test
  void flexibilityNumber() {
    assertEquals(-2.7005, RoweNumber.logRho(14.447, 207e3, 115.2e-6), 1e-3);
    assertEquals(-3.0396, RoweNumber.logRho(14.447, 207e3, 251.5e-6), 1e-3);
    assertEquals(-3.4655, RoweNumber.logRho(14.447, 207e3, 670.5e-6), 1e-3);
  }

  /** The factor from SI from the definitions of foot, inch and pound. */
  @Test
  void unitOfTheFlexibilityNumber() {
    double feet = Math.pow(14.447 / 0.3048, 4);
    double psi = 207e9 / 6894.757;
    double inertia = 251.5e-6 / Math.pow(0.0254, 4) * 0.3048;
    assertEquals(
        Math.log10(feet / (psi * inertia)), RoweNumber.logRho(14.447, 207e3, 251.5e-6), 1e-3);
  }

  @Test
  void noReductionIsMadeUp() {
    assertInstanceOf(RoweNumber.None.class, RoweNumber.reduction(RoweNumber.Ground.LOOSE_SAND));
    assertInstanceOf(RoweNumber.None.class, RoweNumber.reduction(RoweNumber.Ground.FINE_GRAINED));
    RoweNumber.Unknown dense =
        assertInstanceOf(
            RoweNumber.Unknown.class, RoweNumber.reduction(RoweNumber.Ground.DENSER_SAND));
    assertTrue(dense.reason().contains("not held"));
  }
}
