package pilefolio.analysis.sequence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Arithmetic of the formulas of EN 1992-1-1 cl. 3.1.2 and ACI 209R, worked by hand. */
class StrengthGainTest {

  @ParameterizedTest
  @CsvSource({
    "0.5, .1130, .1812, .2734, .1977, .0851",
    "1, .2062, .3106, .4239, .3420, .1958",
    "2, .3509, .4831, .5779, .5039, .3528",
    "3, .4580, .5929, .6630, .5982, .4580",
    "7, .7035, .8009, .8187, .7788, .6839",
    "14, .8805, .9223, .9205, .9016, .8544",
    "28, 1.0072, .9979, 1.0, 1.0, 1.0",
    "56, 1.0853, 1.0405, 1.0603, 1.0760, 1.1177",
  })
  void ratios(double age, double one, double three, double r, double n, double s) {
    assertEquals(one, new StrengthGain.AmericanGain(4.0, 0.85).at(age), 5e-5);
    assertEquals(three, new StrengthGain.AmericanGain(2.3, 0.92).at(age), 5e-5);
    assertEquals(r, new StrengthGain.EuropeanGain(0.20).at(age), 5e-5);
    assertEquals(n, new StrengthGain.EuropeanGain(0.25).at(age), 5e-5);
    assertEquals(s, new StrengthGain.EuropeanGain(0.38).at(age), 5e-5);
  }

  @Test
  void inverse() {
    for (StrengthGain gain :
        List.of(
            new StrengthGain.EuropeanGain(0.25),
            new StrengthGain.AmericanGain(2.3, 0.92),
            new StrengthGain.MeasuredGain(List.of(1.0, 3.0, 28.0), List.of(0.2, 0.5, 1.0)))) {
      for (double age : new double[] {0.4, 1, 2.5, 17}) {
        assertEquals(age, gain.ageOf(gain.at(age)), 1e-12 * age + 1e-12);
      }
      assertEquals(0, gain.at(0));
    }
    assertEquals(Double.POSITIVE_INFINITY, new StrengthGain.EuropeanGain(0.2).ageOf(1.3));
    assertEquals(Double.POSITIVE_INFINITY, new StrengthGain.AmericanGain(4, 0.85).ageOf(1.2));
  }

  @Test
  void measuredCurveIsNotExtended() {
    StrengthGain gain = new StrengthGain.MeasuredGain(List.of(1.0, 3.0), List.of(0.2, 0.5));
    assertTrue(Double.isNaN(gain.at(3.1)));
    assertTrue(Double.isNaN(gain.ageOf(0.6)));
    assertThrows(
        IllegalArgumentException.class,
        () -> new StrengthGain.MeasuredGain(List.of(1.0, 3.0), List.of(0.5, 0.2)));
  }
}
