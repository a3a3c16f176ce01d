package pilefolio.analysis.sequence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Arithmetic of the published formulas, worked by hand. */
class StrengthWindowTest {
  private static final Maturity EUROPEAN = new Maturity.EuropeanAge();
  private static final List<Maturity.Spell> HISTORY =
      List.of(
          new Maturity.Spell(12, 25),
          new Maturity.Spell(12, 22),
          new Maturity.Spell(24, 18),
          new Maturity.Spell(24, 14));

  @ParameterizedTest
  @CsvSource({"5, .4778", "10, .6161", "12, .6804", "15, .7875", "20, .9981", "30, 1.5662"})
  void europeanFactors(double temperature, double factor) {
    assertEquals(factor, EUROPEAN.factor(temperature), 5e-5);
  }

  @Test
  void fortyEightHoursAtTwelveDegrees() {
    assertEquals(32.66, 48 * EUROPEAN.factor(12), 0.005);
    assertEquals(28.8, 48 * new Maturity.TemperatureTime(0, 20).factor(12), 0.05);
    assertEquals(35.2, 48 * new Maturity.TemperatureTime(-10, 20).factor(12), 0.05);
    assertEquals(0.6819, new Maturity.ActivationEnergy(4000, 20).factor(12), 5e-5);
    assertEquals(0.6197, new Maturity.ActivationEnergy(5000, 20).factor(12), 5e-5);
    assertEquals(0, new Maturity.TemperatureTime(0, 20).factor(-3));
  }

  @Test
  void temperatureHistory() {
    Maturity.TemperatureTime zero = new Maturity.TemperatureTime(0, 20);
    Maturity.TemperatureTime ten = new Maturity.TemperatureTime(-10, 20);
    assertEquals(1332, zero.product(HISTORY), 1e-9);
    assertEquals(66.6, zero.equivalentHours(HISTORY), 0.05);
    assertEquals(2052, ten.product(HISTORY), 1e-9);
    assertEquals(68.4, ten.equivalentHours(HISTORY), 0.05);
    double hours = EUROPEAN.equivalentHours(HISTORY);
    assertEquals(68.02, hours, 0.005);
    assertEquals(6.64, 15 * new StrengthGain.EuropeanGain(0.38).at(hours / 24), 0.005);
  }

  @Test
  void windowOfASlowMix() {
    StrengthGain slow = new StrengthGain.EuropeanGain(0.38);
    assertEquals(0.705, slow.ageOf(2.0 / 15), 0.0005);
    assertEquals(3.974, slow.ageOf(8.0 / 15), 0.0005);
    StrengthWindow cool = StrengthWindow.of(slow, 15, 2, 8, EUROPEAN, 12, 0);
    assertEquals(1.036, cool.from(), 0.0005);
    assertEquals(5.841, cool.to(), 0.0005);
    StrengthGain american = new StrengthGain.AmericanGain(4.0, 0.85);
    assertEquals(0.602, american.ageOf(2.0 / 15), 0.0005);
    assertEquals(3.902, american.ageOf(8.0 / 15), 0.0005);
    assertEquals(8.11, StrengthWindow.strengthAt(slow, 15, EUROPEAN, 12, 0, 6), 0.005);
  }

  @Test
  void retarderShiftsTheWindow() {
    StrengthGain slow = new StrengthGain.EuropeanGain(0.38);
    StrengthWindow plain = StrengthWindow.of(slow, 15, 2, 8, EUROPEAN, 12, 0);
    StrengthWindow later = StrengthWindow.of(slow, 15, 2, 8, EUROPEAN, 12, 36);
    assertEquals(1.5, later.from() - plain.from(), 1e-12);
    assertEquals(1.5, later.to() - plain.to(), 1e-12);
    assertEquals(0, StrengthWindow.strengthAt(slow, 15, EUROPEAN, 12, 36, 1.4));
    assertEquals(2, StrengthWindow.strengthAt(slow, 15, EUROPEAN, 12, 36, later.from()), 1e-9);
  }

  @Test
  void windowHoldsAnAgeOnlyWithItsSpread() {
    StrengthWindow window = new StrengthWindow(1.036, 5.841);
    assertTrue(window.holds(2, 0.4));
    assertFalse(window.holds(1, 0));
    assertFalse(window.holds(5.5, 0.4));
    assertThrows(IllegalArgumentException.class, () -> new StrengthWindow(Double.NaN, 2));
    assertThrows(
        IllegalArgumentException.class,
        () ->
            StrengthWindow.of(
                new StrengthGain.EuropeanGain(0.38),
                15,
                2,
                8,
                new Maturity.TemperatureTime(0, 20),
                -1,
                0));
  }

  @Test
  void everyNthPrimary() {
    assertEquals(4, new FreshPileRule(6, 0, 24).everyNthPrimary(0.6, 0.45));
    assertEquals(2, new FreshPileRule(3, 0, 24).everyNthPrimary(0.6, 0.45));
    assertEquals(4, new FreshPileRule(6, 0, 24).everyNthPrimary(0.75, 0.6));
    assertEquals(4, new FreshPileRule(2, 3.5, 24).everyNthPrimary(0.6, 0.45));
    assertEquals(1, new FreshPileRule(6, 0, 24).waitingDays());
    assertEquals(2, new FreshPileRule(6, 0, 36).waitingDays());
    assertEquals(0, new FreshPileRule(6, 0, 0).waitingDays());
  }
}
