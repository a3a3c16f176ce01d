package pilefolio.standards;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tolerance sets, fresh-pile rules and laws of strength gain. */
class InstallationTablesTest {

  /** Cut-off 3.0 m below the working level: 25 + 13.3·3 and 75 + 13.3·3 mm; own arithmetic. */
  @Test
  void positionGrowsBelowTheGuideWall() {
    ToleranceSet with = ToleranceSet.find("sperwall-guide-wall").orElseThrow();
    ToleranceSet without = ToleranceSet.find("sperwall-no-guide-wall").orElseThrow();
    assertEquals(0.0649, with.planAt(0.6, 3), 1e-12);
    assertEquals(0.1149, without.planAt(0.6, 3), 1e-12);
    assertThrows(IllegalArgumentException.class, () -> with.planAt(0.6, -1));
  }

  @Test
  void generalSetsAreNotForSecantWalls() {
    for (ToleranceSet set : ToleranceSet.all()) {
      if (set.verticality() < 75) {
        assertEquals(ToleranceSet.SecantUse.NOT_SUITABLE, set.secant(), set.id());
      }
      if (set.secant() == ToleranceSet.SecantUse.SUITABLE) {
        assertTrue(set.guideWall(), set.id());
      }
    }
  }

  @ParameterizedTest
  @CsvSource({"0.6, 0.10", "1.2, 0.12", "2.0, 0.15"})
  void positionByDiameter(double diameter, double plan) {
    assertEquals(plan, ToleranceSet.find("en-1536").orElseThrow().plan(diameter), 1e-12);
  }

  /** EN 12699:2001, 8.5.1: six diameters. */
  @Test
  void freshPiles() {
    assertEquals(3.6, FreshPileRule.all().get(0).distance(0.6), 1e-12);
    assertEquals(3.0, FreshPileRule.all().get(2).distance(0.4), 1e-12);
  }

  /** Own arithmetic with the expressions of EN 1992-1-1 3.1.2 and ACI 209R-92. */
  @ParameterizedTest
  @CsvSource({
    "en-r, 0.5, 0.2734",
    "en-n, 1, 0.3420",
    "en-s, 3, 0.4580",
    "en-s, 28, 1.0",
    "en-s, 56, 1.1177",
    "aci-i-moist, 2, 0.3509",
    "aci-i-moist, 28, 1.0072",
    "aci-iii-moist, 7, 0.8009"
  })
  void strengthGain(String id, double days, double ratio) {
    assertEquals(ratio, StrengthLaw.find(id).orElseThrow().ratio(days), 5e-5);
  }

  @Test
  void laws() {
    assertEquals(4000, MaturityLaw.find("en-1992-b10").orElseThrow().activation());
    assertTrue(CuttingTool.all().stream().allMatch(tool -> tool.least() < tool.most()));
    assertThrows(
        IllegalArgumentException.class, () -> StrengthLaw.find("en-n").orElseThrow().ratio(0));
  }
}
