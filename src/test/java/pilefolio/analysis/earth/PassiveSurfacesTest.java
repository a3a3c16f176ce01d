package pilefolio.analysis.earth;

import static java.lang.Math.cos;
import static java.lang.Math.exp;
import static java.lang.Math.log;
import static java.lang.Math.sin;
import static java.lang.Math.toRadians;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Passive coefficients of level ground against other solutions with curved surfaces; values of
 * those act along the wall friction, so their horizontal parts are compared.
 */
class PassiveSurfacesTest {

  /**
   * From memory: NAVFAC DM-7.02 (1986), after Caquot and Kérisel: coefficient for full friction
   * times its reduction for a smooth wall.
   */
  @ParameterizedTest
  @CsvSource({
    "10, 1.65, 0.864", "15, 2.19, 0.775", "20, 3.01, 0.678", "25, 4.29, 0.574",
    "30, 6.42, 0.467", "35, 10.2, 0.362", "40, 17.5, 0.262", "45, 33.5, 0.174"
  })
  void aSmoothWallHasTheCoefficientOfRankine(double phi, double full, double reduction) {
    double tabulated = full * reduction;
    assertEquals(tabulated, Rankine.passive(toRadians(phi)), 0.005 * tabulated);
    assertEquals(tabulated, AnnexC2.passive(toRadians(phi), 0, 0, 0).kGamma(), 0.005 * tabulated);
  }

  /**
   * Own numerical solution of the stress field in plastic equilibrium, converged to 0.1 %: it is
   * exact for weight without surcharge, so a lower bound must not exceed it and a plane surface
   * must not fall below it.
   */
  @ParameterizedTest
  @CsvSource({
    "20, 0.3333, 2.384", "20, 0.5, 2.559", "20, 0.6667, 2.732",
    "25, 0.3333, 3.063", "25, 0.5, 3.387", "25, 0.6667, 3.722",
    "30, 0.3333, 4.019", "30, 0.5, 4.614", "30, 0.6667, 5.256",
    "35, 0.3333, 5.420", "35, 0.5, 6.519", "35, 0.6667, 7.772",
    "40, 0.3333, 7.571", "40, 0.5, 9.664", "40, 0.6667, 12.21"
  })
  void theAnnexStaysBelowTheExactFieldAndCoulombAbove(double phi, double ratio, double exact) {
    double phiRad = toRadians(phi);
    double delta = ratio * phiRad;
    double horizontal = exact * cos(delta);
    double annex = AnnexC2.passive(phiRad, delta, 0, 0).kGamma();
    assertTrue(annex <= horizontal * 1.002, annex + " against " + horizontal);
    assertTrue(annex >= horizontal * 0.85, annex + " against " + horizontal);
    assertTrue(Coulomb.passive(phiRad, delta, 0) >= exact * 0.998);
  }

  /**
   * Read: UFC 3-220-20 (2025), Eq. 4-12, a fit; the annex must lie on the same side within a sixth.
   */
  @ParameterizedTest
  @CsvSource({"30, 0.3333, 3.907", "30, 0.5, 4.459", "35, 0.5, 6.334", "40, 0.6667, 11.81"})
  void theFitOfTheManualIsReproducedAndNear(double phi, double ratio, double value) {
    double phiRad = toRadians(phi);
    double fit = exp(log(Rankine.passive(phiRad)) * (1 + 1.443 * ratio * sin(phiRad)));
    assertEquals(value, fit, 1e-3 * value);
    double annex = AnnexC2.passive(phiRad, ratio * phiRad, 0, 0).kGamma();
    assertEquals(fit * cos(ratio * phiRad), annex, fit * 0.17);
  }
}
