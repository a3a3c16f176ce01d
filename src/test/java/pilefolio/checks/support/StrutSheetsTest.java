package pilefolio.checks.support;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pilefolio.checks.CaseFile;
import pilefolio.trace.Binding;
import pilefolio.trace.Calculation;
import pilefolio.trace.Source;

/** Struts against tabulated values and against the differential equation. */
class StrutSheetsTest {
  private static final Source SOURCE = new Source.Layout("test");

  private static Binding tube(double length, double alpha, String force, String ecc, String w) {
    return EnStrut.TUBE
        .bind()
        .set("T", CaseFile.si(force), SOURCE)
        .set("s", 1, SOURCE)
        .set("i", 0, SOURCE)
        .set("N_T", 0, SOURCE)
        .set("γ_Q", 1.5, SOURCE)
        .set("γ_G", 1, SOURCE)
        .set("L", length, SOURCE)
        .set("K", 1, SOURCE)
        .set("f_y", 355e6, SOURCE)
        .set("E", 210e9, SOURCE)
        .set("γ_M1", 1, SOURCE)
        .set("D", 0.508, SOURCE)
        .set("t", 0.0125, SOURCE)
        .set("α", alpha, SOURCE)
        .set("w", CaseFile.si(w), SOURCE)
        .set("e", CaseFile.si(ecc), SOURCE);
  }

  /** Reduction factors of the five curves as tables of EN 1993-1-1 print them. */
  @ParameterizedTest
  @CsvSource({
    "0.5, 0.9513, 0.9243, 0.8842, 0.8430, 0.7793",
    "1.0, 0.7253, 0.6656, 0.5970, 0.5399, 0.4671",
    "1.5, 0.3953, 0.3724, 0.3422, 0.3145, 0.2766",
    "2.0, 0.2323, 0.2229, 0.2095, 0.1962, 0.1766"
  })
  void bucklingCurves(double slenderness, double a0, double a, double b, double c, double d) {
    double[] alpha = {0.13, 0.21, 0.34, 0.49, 0.76};
    double[] tabulated = {a0, a, b, c, d};
    Calculation one = tube(1, 0.21, "1 kN/m", "0 mm", "0 kN/m").calculate();
    double length = slenderness / one.value("λ");
    for (int i = 0; i < alpha.length; i++) {
      Calculation found = tube(length, alpha[i], "1 kN/m", "0 mm", "0 kN/m").calculate();
      assertEquals(slenderness, found.value("λ"), 1e-12);
      assertEquals(tabulated[i], found.value("χ"), 5.5e-5, "curve " + i);
    }
  }

  /** The beam-column by finite differences: EI·v'' + N·(v + e) = −w·x·(L − x)/2. */
  @Test
  void momentGrowsAsTheDifferentialEquationSays() {
    double length = 12;
    double n = 1500e3;
    double w = 1.5e3;
    double e = 0.05;
    Calculation found = tube(length, 0.21, "1500 kN/m", "50 mm", "1.5 kN/m").calculate();
    double ei = 210e9 * found.value("I");
    int parts = 2000;
    double h = length / parts;
    // Thomas' method for v at the inner points; v is 0 at both ends.
    double[] upper = new double[parts + 1];
    double[] right = new double[parts + 1];
    double middle = -2 + n * h * h / ei;
    for (int i = 1; i < parts; i++) {
      double x = i * h;
      double load = -(w * x * (length - x) / 2 + n * e) * h * h / ei;
      double pivot = middle - upper[i - 1];
      upper[i] = 1 / pivot;
      right[i] = (load - right[i - 1]) / pivot;
    }
    double v = 0;
    for (int i = parts - 1; i >= parts / 2; i--) {
      v = right[i] - upper[i] * v;
    }
    double moment = w * length * length / 8 + n * (v + e);
    assertEquals(moment, found.value("M_Ed"), 1e-5 * moment);
  }

  @Test
  void closeToTheEulerLoadNothingIsSaid() {
    double euler = tube(12, 0.21, "1 kN/m", "0 mm", "0 kN/m").calculate().value("N_cr");
    String force = 0.95 * euler / 1000 + " kN/m";
    assertThrows(
        ArithmeticException.class, () -> tube(12, 0.21, force, "0 mm", "0 kN/m").calculate());
  }
}
