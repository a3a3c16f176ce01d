package pilefolio.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import pilefolio.checks.CaseFile.Quantity;
import pilefolio.trace.Calculation;
import pilefolio.units.Unit;

/** Each case file is a test of its own; a case without an expected value fails. */
class CasesTest {
  private static final Set<String> KINDS = Set.of("published", "hand", "regression");
  private static final Set<String> KNOWN = Set.of("READ", "QUOTED", "MEMORY", "PRACTICE", "OWN");

  @TestFactory
  Stream<DynamicTest> cases() {
    return CaseFile.all().stream()
        .map(
            one ->
                DynamicTest.dynamicTest(
                    CaseFile.FOLDER.relativize(one.path()).toString(), () -> run(one)));
  }

  private static void run(CaseFile one) {
    Check check =
        Checks.ALL.stream()
            .filter(c -> c.id().equals(one.checkId()))
            .findFirst()
            .orElseThrow(() -> new AssertionError("no check is called " + one.checkId()));
    assertFalse(one.text("title").isBlank(), "title");
    assertTrue(KINDS.contains(one.text("kind")), "kind");
    assertTrue(KNOWN.contains(one.text("known")), "known");
    assertFalse(one.text("source").isBlank(), "source");
    JsonNode expect = one.json().path("expect");
    assertFalse(expect.isEmpty(), "a case without an expected value");
    Calculation calculation = one.calculate(check);
    for (Map.Entry<String, JsonNode> field : expect.properties()) {
      if (field.getKey().equals("verdict")) {
        assertEquals(field.getValue().asText(), calculation.verdict().result().words(), "verdict");
      } else {
        compare(one, calculation, field.getKey(), field.getValue().asText());
      }
    }
  }

  private static void compare(CaseFile one, Calculation calculation, String name, String expected) {
    Quantity quantity = Quantity.of(expected);
    double si = value(calculation, name);
    Unit unit = quantity.unit();
    double found = unit.fromSi(si);
    String own = one.json().path("tolerance").path(name).asText("");
    double tolerance = quantity.halfDigit() * 1.000001;
    if (!own.isEmpty()) {
      assertFalse(one.text("toleranceReason").isBlank(), "a tolerance of its own needs a reason");
      tolerance =
          own.endsWith("%")
              ? Math.abs(quantity.number()) * Double.parseDouble(own.replace("%", "").strip()) / 100
              : Quantity.of(own).number();
    }
    assertEquals(quantity.number(), found, tolerance, name + " in " + unit.symbol());
  }

  /** A symbol of the sheet, or {@code table[row].column}: rows counted from 1, or {@code last}. */
  private static double value(Calculation calculation, String name) {
    int open = name.indexOf('[');
    if (open < 0) {
      return calculation.value(name);
    }
    int close = name.indexOf(']');
    var rows = calculation.table(name.substring(0, open)).rows();
    String row = name.substring(open + 1, close);
    return rows.get((row.equals("last") ? rows.size() : Integer.parseInt(row)) - 1)
        .values()
        .get(name.substring(close + 2).replace('′', '\''));
  }
}
