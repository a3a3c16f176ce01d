package pilefolio.analysis.stability;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import pilefolio.analysis.earth.OutsideRange;

/** Values worked by hand from the formulas of Terzaghi (1943) and Bjerrum and Eide (1956). */
class BasalHeaveTest {
  private static final double DEEP = Double.POSITIVE_INFINITY;

  private static double terzaghi(double width, double hard, double load) {
    return new BasalHeave(30, 18, 8, width, load).terzaghi(hard).orElseThrow();
  }

  @Test
  void terzaghiWithAndWithoutHardLayer() {
    assertEquals(1.9558, terzaghi(6, DEEP, 0), 1e-4);
    assertEquals(1.7551, terzaghi(6, DEEP, 10), 1e-4);
    assertEquals(3.5625, terzaghi(6, 2.5, 0), 1e-4);
    assertEquals(2.9483, terzaghi(6, 2.5, 10), 1e-4);
    assertEquals(1.4089, terzaghi(15, DEEP, 0), 1e-4);
    assertEquals(1.3016, terzaghi(15, DEEP, 10), 1e-4);
    assertEquals(2.0357, terzaghi(15, 4, 0), 1e-4);
    assertEquals(1.8191, terzaghi(15, 4, 10), 1e-4);
  }

  @Test
  void strongGroundDrivesNoHeave() {
    // c/B' = 30/1.6 = 18.75 kN/m³ carries the 18 kN/m³ of the ground.
    assertTrue(new BasalHeave(30, 18, 8, 6, 0).terzaghi(1.6).isEmpty());
  }

  @Test
  void bjerrumEide() {
    BasalHeave heave = new BasalHeave(35, 18, 8, 4, 10);
    assertEquals(7.504, HeaveFactors.bjerrumEide(2, 4.0 / 12), 5e-4);
    assertEquals(1.7055, heave.bjerrumEide(4.0 / 12), 1e-4);
    assertEquals(1.5909, heave.bjerrumEide(0), 1e-4);
  }

  @Test
  void bjerrumEideAsksForDeepExcavations() {
    BasalHeave wide = new BasalHeave(35, 18, 8, 8, 10);
    assertThrows(OutsideRange.class, () -> wide.bjerrumEide(0));
  }

  @Test
  void chartIsHeldAtItsEnd() {
    assertEquals(6.7, HeaveFactors.bjerrumEideStrip(1.5), 1e-12);
    assertEquals(7.5, HeaveFactors.bjerrumEideStrip(4), 1e-12);
    assertEquals(7.5, HeaveFactors.bjerrumEideStrip(9), 1e-12);
    assertEquals(9.0, HeaveFactors.bjerrumEideSquare(6), 1e-12);
    assertThrows(OutsideRange.class, () -> HeaveFactors.bjerrumEideSquare(-0.1));
    assertThrows(OutsideRange.class, () -> HeaveFactors.bjerrumEide(2, 1.1));
  }

  /** The values that Smith prints for long and for square excavations. */
  @Test
  void skempton() {
    double[] ratios = {0, 1, 2, 2.5, 4};
    double[] strip = {5, 6, 7, 7.5, 7.5};
    double[] square = {6, 7.2, 8.4, 9, 9};
    for (int i = 0; i < ratios.length; i++) {
      assertEquals(strip[i], HeaveFactors.skempton(ratios[i], 0), 1e-12);
      assertEquals(square[i], HeaveFactors.skempton(ratios[i], 1), 1e-12);
    }
    assertThrows(OutsideRange.class, () -> HeaveFactors.skempton(1, 1.5));
  }

  @Test
  void sideShear() {
    assertEquals(1.8661, new BasalHeave(35, 18, 8, 4, 10).chang(12, DEEP), 1e-4);
    assertThrows(OutsideRange.class, () -> new BasalHeave(35, 18, 8, 4, 10).chang(3, DEEP));
  }
}
