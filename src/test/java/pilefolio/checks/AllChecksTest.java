package pilefolio.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Calculation;
import pilefolio.trace.Printer;
import pilefolio.trace.Verdict;
import pilefolio.units.DisplaySystem;

/** What must hold for every check, from the day it is listed. */
class AllChecksTest {

  @Test
  void idsAreUniqueAndWellFormed() {
    Set<String> seen = new HashSet<>();
    for (Check check : Checks.ALL) {
      assertTrue(check.id().matches("[a-z][a-z0-9-]+"), check.id());
      assertTrue(seen.add(check.id()), check.id() + " twice");
    }
  }

  @TestFactory
  Stream<DynamicTest> eachCheckHasItsPageItsSheetsAndItsCases() {
    List<CaseFile> cases = CaseFile.all();
    return Checks.ALL.stream()
        .map(check -> DynamicTest.dynamicTest(check.id(), () -> examine(check, cases)));
  }

  private static void examine(Check check, List<CaseFile> all) {
    CheckPage page = CheckPage.of(check.id());
    assertFalse(page.question().isBlank());
    assertFalse(check.sheets().isEmpty(), "no sheet");
    Set<String> titles = new HashSet<>();
    for (CalcSheet sheet : check.sheets()) {
      assertEquals(Set.of(), sheet.unused(), sheet.title() + ": given but not used");
      assertTrue(titles.add(sheet.title()), sheet.title() + " twice");
    }
    List<CaseFile> cases = all.stream().filter(c -> c.checkId().equals(check.id())).toList();
    assertTrue(
        cases.stream().anyMatch(c -> !c.text("kind").equals("regression")),
        "no published or hand-worked case");
    if (!check.derivation()) {
      assertTrue(
          cases.stream()
              .anyMatch(
                  c ->
                      c.json()
                          .path("expect")
                          .path("verdict")
                          .asText()
                          .equals(Verdict.Result.NOT_SATISFIED.words())),
          "no case that must not be satisfied");
    }
    for (CaseFile one : cases) {
      Calculation calculation = one.calculate(check);
      new Printer(DisplaySystem.SI).print(calculation);
      new Printer(DisplaySystem.US).print(calculation);
    }
  }
}
