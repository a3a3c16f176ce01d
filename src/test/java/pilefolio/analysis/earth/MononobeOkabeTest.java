package pilefolio.analysis.earth;

import static java.lang.Math.toDegrees;
import static java.lang.Math.toRadians;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MononobeOkabeTest {

  private static double kae(double phi, double delta, double kh, double kv) {
    return MononobeOkabe.active(
        toRadians(phi), toRadians(delta), 0, MononobeOkabe.inclination(kh, kv));
  }

  // Whitman (1990), ASCE GSP 25, Fig. 11: 8892 lb/ft at rest of the earthquake, 4088 lb/ft added.
  @Test
  void whitman() {
    double half = 0.5 * 105 * 25 * 25;
    double ka = Rankine.active(toRadians(35));
    double kae = kae(35, 0, 0.2, 0);
    assertEquals(0.3956, kae, 1e-4);
    assertEquals(8892, ka * half, 8892e-4);
    assertEquals(4088, (kae - ka) * half, 4088e-4);
  }

  // Kramer, Geotechnical Earthquake Engineering, Chapter 11 (from memory): .256, 55.4, .362, 72.4.
  @Test
  void kramer() {
    double psi = MononobeOkabe.inclination(0.15, 0.075);
    assertEquals(9.211, toDegrees(psi), 1e-3);
    double ka = Coulomb.active(toRadians(34), toRadians(17), 0);
    double kae = kae(34, 17, 0.15, 0.075);
    assertEquals(0.25644, ka, 1e-4);
    assertEquals(0.36234, kae, 1e-4);
    double weight = 0.5 * 17.3 * 25;
    double before = ka * weight;
    double total = kae * weight * (1 - 0.075);
    assertEquals(55.45, before, 55.45e-4);
    assertEquals(72.48, total, 72.48e-4);
    double arm = (before * 5 / 3 + (total - before) * 0.6 * 5) / total;
    assertEquals(1.980, arm, 1e-3);
  }

  // By hand from UFC 3-220-20 Eq. 4-15.
  @ParameterizedTest
  @CsvSource({
    "30,0,0.1,0,0.3966",
    "30,15,0.1,0,0.3679",
    "30,15,0.2,0,0.4520",
    "35,17.5,0.2,0,0.3797",
    "35,17.5,0.3,0,0.4743",
    "30,15,0.2,0.1,0.4739",
    "30,0,0.24,-0.12,0.485618"
  })
  void active(double phi, double delta, double kh, double kv, double expected) {
    assertEquals(expected, kae(phi, delta, kh, kv), 1e-4);
  }

  @Test
  void passive() {
    double psi = MononobeOkabe.inclination(0.24, -0.12);
    assertEquals(0.211093, psi, 1e-6);
    assertEquals(2.6003, MononobeOkabe.passive(toRadians(30), psi), 1e-4 * 2.6003);
    assertEquals(3, MononobeOkabe.passive(toRadians(30), 0), 1e-12);
  }

  @Test
  void withoutAnEarthquakeItIsCoulomb() {
    double phi = toRadians(33);
    double delta = toRadians(14);
    double beta = toRadians(7);
    assertEquals(
        Coulomb.active(phi, delta, beta), MononobeOkabe.active(phi, delta, beta, 0), 1e-12);
  }

  // The largest thrust of a plane wedge, sought over its inclination, is the closed form.
  @Test
  void theWorstWedgeGivesTheSame() {
    double phi = toRadians(32);
    double delta = toRadians(16);
    double psi = MononobeOkabe.inclination(0.15, 0);
    double worst = 0;
    for (double a = 20; a < 80; a += 0.01) {
      double plane = toRadians(a);
      double weight = 0.5 / Math.tan(plane) / Math.cos(psi);
      worst = Math.max(worst, weight * Math.sin(plane - phi + psi) / Math.cos(plane - phi - delta));
    }
    assertEquals(2 * worst, MononobeOkabe.active(phi, delta, 0, psi), 1e-6);
  }

  @Test
  void groundThatWouldNotStandIsRefused() {
    assertThrows(OutsideRange.class, () -> kae(30, 15, 0.6, 0));
    assertThrows(
        OutsideRange.class,
        () -> MononobeOkabe.active(toRadians(30), 0, toRadians(20), toRadians(10.1)));
    assertThrows(OutsideRange.class, () -> MononobeOkabe.passive(toRadians(20), toRadians(21)));
    assertThrows(OutsideRange.class, () -> MononobeOkabe.inclination(-0.1, 0));
  }

  // UFC 3-220-20 Eq. 4-17 to 4-20; numbers by hand for γ = 18, H = 6 m, k_h = 0.2.
  @Test
  void otherPieces() {
    assertEquals(48.6, MononobeOkabe.seedWhitman(0.2, 18, 6), 0.0486);
    assertEquals(129.6, MononobeOkabe.nonYielding(0.2, 18, 6), 0.1296);
    assertEquals(10.30, MononobeOkabe.hydrodynamic(0.2, 9.81, 6, 6), 0.0103);
    assertEquals(41.20, MononobeOkabe.hydrodynamicForce(0.2, 9.81, 6), 0.0412);
    double sum =
        new IterativeLegendreGaussIntegrator(10, 1e-8, 1e-8)
            .integrate(100_000, z -> MononobeOkabe.hydrodynamic(0.2, 9.81, z, 6), 0, 6);
    assertEquals(MononobeOkabe.hydrodynamicForce(0.2, 9.81, 6), sum, 1e-4 * sum);
    assertTrue(MononobeOkabe.hydrodynamic(0.2, 9.81, -1, 6) == 0);
  }
}
