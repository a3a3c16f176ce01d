package pilefolio.analysis.earth;

import static java.lang.Math.toDegrees;
import static java.lang.Math.toRadians;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CoefficientsTest {

  // Closed form: UFC 3-220-20 Eq. 4-3 and 4-4. φ = 32: Das, Principles of Foundation Engineering,
  // 8th ed., Ex. 14.1 gives 0.307 and 3.25.
  @ParameterizedTest
  @CsvSource({
    "20,0.4903,2.0396",
    "25,0.4059,2.4639",
    "28,0.3610,2.7698",
    "30,0.3333,3.0000",
    "32,0.3073,3.2546",
    "34,0.2827,3.5371",
    "35,0.2710,3.6902",
    "36,0.2596,3.8518",
    "38,0.2379,4.2037",
    "40,0.2174,4.5989",
    "45,0.1716,5.8284"
  })
  void rankineLevelGround(double phi, double ka, double kp) {
    assertEquals(ka, Rankine.active(toRadians(phi)), 6e-5);
    assertEquals(kp, Rankine.passive(toRadians(phi)), 1e-4 * kp);
  }

  // Equation from memory of soil-mechanics texts; values by hand.
  @ParameterizedTest
  @CsvSource({
    "30,5,0.3372,2.9431",
    "30,10,0.3495,2.7748",
    "30,15,0.3729,2.5017",
    "30,20,0.4142,2.1318",
    "30,25,0.4936,1.6641",
    "30,30,0.8660,0.8660",
    "35,10,0.2818,3.4422",
    "35,15,0.2968,3.1437",
    "35,20,0.3216,2.7454"
  })
  void rankineSlopingGround(double phi, double beta, double ka, double kp) {
    assertEquals(ka, Rankine.activeParallelToSlope(toRadians(phi), toRadians(beta)), 6e-5);
    assertEquals(kp, Rankine.passiveParallelToSlope(toRadians(phi), toRadians(beta)), 6e-5);
  }

  @Test
  void slopeSteeperThanFrictionIsRefused() {
    assertThrows(
        OutsideRange.class, () -> Rankine.activeParallelToSlope(toRadians(30), toRadians(31)));
    assertThrows(OutsideRange.class, () -> Coulomb.active(toRadians(30), 0, toRadians(31)));
  }

  // First three: Das, Principios de ingeniería de cimentaciones, Table 6.4. The others by hand from
  // UFC 3-220-20 Eq. 4-10.
  @ParameterizedTest
  @CsvSource({
    "28,0,0,0.3610",
    "30,5,0,0.3189",
    "32,10,0,0.2853",
    "30,20,0,0.2973",
    "30,15,10,0.3432",
    "30,20,15,0.3707",
    "34,17,0,0.2564"
  })
  void coulombActive(double phi, double delta, double beta, double ka) {
    assertEquals(ka, Coulomb.active(toRadians(phi), toRadians(delta), toRadians(beta)), 1e-3 * ka);
  }

  // By hand from UFC 3-220-20 Eq. 4-11; the first four also stand in public course notes.
  @ParameterizedTest
  @CsvSource({
    "26,0,0,2.561",
    "30,22,0,6.675",
    "32,17,10,10.492",
    "40,16,-10,5.335",
    "30,10,0,4.143",
    "30,15,0,4.977",
    "30,20,0,6.105",
    "35,17.5,0,7.357"
  })
  void coulombPassive(double phi, double delta, double beta, double kp) {
    assertEquals(kp, Coulomb.passive(toRadians(phi), toRadians(delta), toRadians(beta)), 1e-3 * kp);
  }

  // Limit of plane surfaces: UFC 3-220-20, note to Eq. 4-11.
  @Test
  void coulombPassiveCarriesACautionAboveFourTenths() {
    Coefficients at = CoefficientMethod.COULOMB.of(DrainedStrength.ofDegrees(0, 30, 0.4, 0.4));
    Coefficients above = CoefficientMethod.COULOMB.of(DrainedStrength.ofDegrees(0, 30, 0.41, 0.41));
    assertFalse(at.cautions().contains(Coefficients.Caution.PLANE_PASSIVE_UNSAFE));
    assertTrue(above.cautions().contains(Coefficients.Caution.PLANE_PASSIVE_UNSAFE));
  }

  // Procedure of EN 1997-1:2004 Annex C.2. The pair φ = 35, δ = ⅔φ stands as 0.23 and 6.51 in the
  // workshop on evaluation of Eurocode 7 (ISSMGE ERTC10, Dublin 2005), Example 7; the rest by hand.
  @ParameterizedTest
  @CsvSource({
    "20,0,2.0396,0,35.000,0.4903",
    "20,1/2,2.4770,20.256,14.744,0.4446",
    "20,2/3,2.5824,27.866,7.134,0.4343",
    "20,1,2.6992,55.0,-20,0.4218",
    "25,1/2,3.2215,21.653,10.847,0.3626",
    "25,2/3,3.4128,29.702,2.798,0.3527",
    "30,1/3,3.8864,15.161,14.839,0.3053",
    "30,1/2,4.2877,23.087,6.913,0.2944",
    "30,2/3,4.6327,31.580,-1.580,0.2852",
    "30,1,5.0262,60.0,-30,0.2731",
    "35,1/2,5.8788,24.559,2.941,0.2373",
    "35,2/3,6.5102,33.503,-6.003,0.2291",
    "35,1,7.2497,62.5,-35,0.2177",
    "40,1/2,8.3780,26.073,-1.073,0.1893",
    "40,2/3,9.5730,35.475,-10.475,0.1822",
    "40,1,11.0259,65.0,-40,0.1718"
  })
  void annexC2LevelGround(
      double phi, String ratio, double kp, double vDeg, double mwDeg, double ka) {
    double r = fraction(ratio);
    Coefficients c = CoefficientMethod.EN1997_ANNEX_C2.of(DrainedStrength.ofDegrees(0, phi, r, r));
    assertEquals(kp, c.kP(), 1e-4 * kp);
    assertEquals(ka, c.kA(), 6e-5);
    SlipFan fan = c.passiveFan().orElseThrow();
    assertEquals(vDeg, toDegrees(fan.vRad()), 6e-4);
    assertEquals(mwDeg, toDegrees(fan.mWRad()), 6e-4);
  }

  private static double fraction(String text) {
    String[] p = text.split("/");
    return p.length == 1
        ? Double.parseDouble(p[0])
        : Double.parseDouble(p[0]) / Double.parseDouble(p[1]);
  }

  // By hand from the procedure of EN 1997-1:2004 Annex C.2.
  @Test
  void annexC2SlopingGround() {
    AnnexC2.Result up = AnnexC2.passive(toRadians(30), toRadians(20), toRadians(10), 0);
    assertEquals(35.161, toDegrees(up.fan().mTRad()), 6e-4);
    assertEquals(-1.580, toDegrees(up.fan().mWRad()), 6e-4);
    assertEquals(46.741, toDegrees(up.fan().vRad()), 6e-4);
    assertEquals(6.1881, up.fan().kN(), 6e-4);
    assertEquals(6.0015, up.kGamma(), 6e-4);
    assertEquals(6.0015, up.kQ(), 6e-4);
    assertEquals(8.986, up.kC(), 1e-3);
    AnnexC2.Result down = AnnexC2.passive(toRadians(30), toRadians(20), toRadians(-10), 0);
    assertEquals(3.3587, down.fan().kN(), 4e-4);
    assertEquals(3.2574, down.kGamma(), 4e-4);
    AnnexC2.Result active = AnnexC2.active(toRadians(30), toRadians(15), toRadians(10), 0);
    assertEquals(44.839, toDegrees(active.fan().mTRad()), 6e-4);
    assertEquals(51.913, toDegrees(active.fan().mWRad()), 6e-4);
    assertEquals(2.926, toDegrees(active.fan().vRad()), 6e-4);
    assertEquals(0.3320, active.kGamma(), 6e-5);
    assertEquals(
        0.2188, AnnexC2.active(toRadians(35), toRadians(17.5), toRadians(-10), 0).kGamma(), 6e-5);
  }

  // EN 1997-1:2004 Annex C.2 holds for v of zero or more only.
  @Test
  void annexC2RefusesANegativeFan() {
    assertThrows(
        OutsideRange.class, () -> AnnexC2.active(toRadians(30), toRadians(15), toRadians(20), 0));
    assertThrows(
        OutsideRange.class, () -> AnnexC2.active(toRadians(30), toRadians(10), toRadians(15), 0));
  }

  // Identity for δ = φ on level ground: (1 + sin φ)·exp[(π/2 + φ)·tan φ].
  @ParameterizedTest
  @CsvSource({"15", "22.5", "30", "37", "44"})
  void annexC2FullyRoughClosedForm(double phiDeg) {
    double phi = toRadians(phiDeg);
    double exact = (1 + Math.sin(phi)) * Math.exp((Math.PI / 2 + phi) * Math.tan(phi));
    assertEquals(exact, AnnexC2.passive(phi, phi, 0, 0).kGamma(), 1e-10 * exact);
  }

  // By hand: φ = 0 (Kc 2 to 1 + π/2), and φ = 25 with δ = ⅔φ.
  @Test
  void annexC2Cohesion() {
    assertEquals(2.0, AnnexC2.undrained(0).kC(), 1e-12);
    assertEquals(2.2209, AnnexC2.undrained(0.25).kC(), 6e-5);
    assertEquals(2.3896, AnnexC2.undrained(0.5).kC(), 6e-5);
    assertEquals(2.4751, AnnexC2.undrained(2.0 / 3).kC(), 6e-5);
    assertEquals(1 + Math.PI / 2, AnnexC2.undrained(1).kC(), 1e-12);
    Coefficients c =
        CoefficientMethod.EN1997_ANNEX_C2.of(DrainedStrength.ofDegrees(5, 25, 2.0 / 3, 2.0 / 3));
    assertEquals(5.1744, c.kPc(), 1e-4 * 5.1744);
    assertEquals(1.3881, c.kAc(), 1e-4 * 1.3881);
  }

  // 2√(1 + a/c), by hand: 2.236, 2.449, 2.582.
  @ParameterizedTest
  @CsvSource({"0.25,2.236", "0.5,2.449", "0.6667,2.582"})
  void plainUndrainedCoefficientWithAdhesion(double ratio, double k) {
    assertEquals(k, CoefficientMethod.COULOMB.of(new UndrainedStrength(40, 0, ratio)).kPc(), 6e-4);
    assertEquals(2, CoefficientMethod.RANKINE.of(new UndrainedStrength(40, 0, ratio)).kPc(), 0);
  }

  // Mayne and Kulhawy 1982, UFC 3-220-20 Eq. 4-2; EN 1997-1 9.5.2 after Bond and Harris, Decoding
  // Eurocode 7, §12.4.3. Values by hand.
  @Test
  void atRest() {
    assertEquals(0.5, AtRest.power(toRadians(30), 1), 1e-12);
    assertEquals(1.0, AtRest.power(toRadians(30), 4), 1e-12);
    assertEquals(0.7739, AtRest.power(toRadians(25), 2), 6e-5);
    assertEquals(0.8165, AtRest.squareRoot(toRadians(25), 2, 0), 6e-5);
    assertEquals(0.5005, AtRest.squareRoot(toRadians(35), 1, toRadians(10)), 6e-5);
    assertThrows(OutsideRange.class, () -> AtRest.power(0.5, 0.9));
  }
}
