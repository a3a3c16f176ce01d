package pilefolio.standards;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pilefolio.trace.Known;

/** Grades of steel and concrete. */
class MaterialsTest {

  /** EN 10025-2 steps, EN 1993-1-1 Table 3.1, ASTM grades. */
  @ParameterizedTest
  @CsvSource({
    "S355, 16, 355",
    "s 355, 16.1, 345",
    "S355, 40, 345",
    "S355, 63, 335",
    "S355, 80, 325",
    "S355, 100, 315",
    "S275, 19, 265",
    "S235, 12, 235",
    "S355 EN 1993, 19, 355",
    "A992, 60, 344.738",
    "A36, 25, 248.211",
    "A572-50, 25, 344.738"
  })
  void yieldByThickness(String grade, double millimetres, double megapascals) {
    SteelGrade steel = SteelGrade.find(grade).orElseThrow();
    assertEquals(megapascals * 1e6, steel.yieldStrength(millimetres / 1e3).orElseThrow(), 1e3);
  }

  @Test
  void beyondTheTableThereIsNoStrength() {
    assertEquals(Optional.empty(), SteelGrade.find("S355").orElseThrow().yieldStrength(0.101));
    assertEquals(
        Optional.empty(), SteelGrade.find("S275 EN 1993").orElseThrow().yieldStrength(0.041));
    assertEquals(Optional.empty(), SteelGrade.find("S999"));
  }

  @Test
  void moduli() {
    assertEquals(29000, SteelGrade.find("A992").orElseThrow().elasticModulus() / 6894757.29, 1e-3);
    assertEquals(210e9, SteelGrade.find("S355").orElseThrow().elasticModulus(), 1);
    assertEquals(81e9, SteelGrade.find("S355").orElseThrow().shearModulus(), 1);
  }

  /** f_ctm = 0.30·f_ck^(2/3) and E_cm = 22·((f_ck + 8)/10)^0.3, the expressions of the table. */
  @Test
  void concreteTableFollowsItsExpressions() {
    for (ConcreteGrade grade : ConcreteGrade.all()) {
      double strength = grade.strength();
      assertEquals(0.3 * Math.pow(strength, 2 / 3.0), grade.meanTension(), 0.051, grade.grade());
      assertEquals(22 * Math.pow((strength + 8) / 10, 0.3), grade.elastic(), 0.6, grade.grade());
      assertEquals(Known.MEMORY, grade.reference().known());
    }
    assertEquals(1.33, ConcreteGrade.find("c16/20").orElseThrow().lowTension(), 1e-9);
  }

  @Test
  void aGradeThatGrowsWithThicknessIsRefused() {
    SteelGrade steel = SteelGrade.find("S355").orElseThrow();
    assertTrue(steel.steps().size() == 5);
    var turned = java.util.List.of(steel.steps().get(1), steel.steps().get(0));
    assertThrows(
        IllegalArgumentException.class,
        () -> new SteelGrade("x", "y", "MPa", 210, 81, turned, steel.reference()));
  }
}
