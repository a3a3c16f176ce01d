package pilefolio.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pilefolio.submittal.Answer;
import pilefolio.submittal.InputLine;
import pilefolio.submittal.Submittal;
import pilefolio.trace.Calculation;
import pilefolio.units.DisplaySystem;
import pilefolio.workbook.Retyped;

/**
 * A job is the same job in whatever units it is typed: the same questions are asked and answered
 * alike, and utilisations agree to four figures. Conversion factors are exact by definition (1 in =
 * 25.4 mm, 1 lb = 0.45359237 kg at 9.80665 m/s²).
 */
class UnitsOfAJobTest {
  /** Half a unit of the fourth figure of a number that begins with 9. */
  private static final double FOUR_FIGURES = 5e-5;

  /** Sums that close at zero, such as of moments in N·m, keep noise of the last bits. */
  private static final double CLOSING = 1e-6;

  @ParameterizedTest
  @ValueSource(strings = {"ten-piles", "car-park-basement", "river-street-pump-station"})
  void inTheOtherSystem(String sample) throws IOException {
    DisplaySystem other =
        Retyped.system(sample) == DisplaySystem.SI ? DisplaySystem.US : DisplaySystem.SI;
    Submittal retyped = submittal(Retyped.in(other, sample));
    assertEquals(other, retyped.system());
    compare(submittal(Retyped.asItStands(sample)), retyped);
  }

  @ParameterizedTest
  @ValueSource(strings = {"ten-piles", "car-park-basement", "river-street-pump-station"})
  void withUnitsMixedInOneWorkbook(String sample) throws IOException {
    Submittal mixed = submittal(Retyped.mixed(sample));
    assertTrue(
        mixed.inputs().stream().map(InputLine::unit).distinct().count() > 25, "units are mixed");
    compare(submittal(Retyped.asItStands(sample)), mixed);
  }

  @ParameterizedTest
  @ValueSource(strings = {"ten-piles", "river-street-pump-station"})
  void withToesLeftToTheEngine(String sample) throws IOException {
    compare(
        submittal(Retyped.withoutToesIn(DisplaySystem.SI, sample)),
        submittal(Retyped.withoutToesIn(DisplaySystem.US, sample)));
  }

  @Test
  void assumptionsStandInTheUnitsOfTheDocuments() throws IOException {
    assertEquals("4 m", assumed(DisplaySystem.SI, "Head over casing shoe"));
    assertEquals("4 m (13.1 ft)", assumed(DisplaySystem.US, "Head over casing shoe"));
    String level = "toe level of the secondaries";
    assertTrue(assumed(DisplaySystem.SI, level).startsWith("3.00 m, the least that suffices"));
    assertTrue(assumed(DisplaySystem.US, level).startsWith("9.84 ft, the least that suffices"));
  }

  private static String assumed(DisplaySystem system, String what) throws IOException {
    return submittal(Retyped.withoutToesIn(system, "ten-piles"))
        .job()
        .submission()
        .assumptions()
        .stream()
        .filter(assumption -> assumption.column().equals(what))
        .findFirst()
        .orElseThrow()
        .text();
  }

  private static Submittal submittal(byte[] workbook) throws IOException {
    Production.Checked checked = Production.check("job.xlsx", workbook);
    assertEquals(List.of(), checked.findings());
    return checked.submittal();
  }

  private static void compare(Submittal one, Submittal other) {
    List<String> differences = new ArrayList<>();
    inputs(one, other, differences);
    Map<String, List<Answer>> expected = answers(one);
    Map<String, List<Answer>> found = answers(other);
    assertEquals(expected.keySet(), found.keySet());
    for (Map.Entry<String, List<Answer>> entry : expected.entrySet()) {
      List<Answer> others = found.get(entry.getKey());
      assertEquals(entry.getValue().size(), others.size(), entry.getKey());
      for (int i = 0; i < others.size(); i++) {
        compare(entry.getKey(), entry.getValue().get(i), others.get(i), differences);
      }
    }
    assertEquals(List.of(), differences);
  }

  private static void inputs(Submittal one, Submittal other, List<String> differences) {
    assertEquals(one.inputs().size(), other.inputs().size());
    for (int i = 0; i < one.inputs().size(); i++) {
      InputLine a = one.inputs().get(i);
      InputLine b = other.inputs().get(i);
      assertEquals(a.cell(), b.cell());
      if (a.si().isPresent() && !near(a.si().getAsDouble(), b.si().getAsDouble(), 1e-12)) {
        differences.add(a + " and " + b);
      }
    }
  }

  private static Map<String, List<Answer>> answers(Submittal submittal) {
    Map<String, List<Answer>> answers = new TreeMap<>();
    for (Answer answer : submittal.answers()) {
      String key = answer.checkId() + ": " + answer.result().subject().label();
      answers.computeIfAbsent(key, unused -> new ArrayList<>()).add(answer);
    }
    answers
        .values()
        .forEach(
            same -> same.sort(Comparator.comparingDouble(answer -> answer.verdict().severity())));
    return answers;
  }

  private static void compare(String key, Answer one, Answer other, List<String> differences) {
    if (one.verdict().result() != other.verdict().result()) {
      differences.add(key + ": " + one.verdict() + " and " + other.verdict());
    }
    OptionalDouble a = one.verdict().utilisation();
    OptionalDouble b = other.verdict().utilisation();
    if (a.isPresent() != b.isPresent()
        || (a.isPresent() && !near(a.getAsDouble(), b.getAsDouble(), FOUR_FIGURES))) {
      differences.add(key + ": utilisation " + a + " and " + b);
    }
    List<Calculation> sheets = one.result().calculations();
    assertEquals(sheets.size(), other.result().calculations().size(), key);
    for (int i = 0; i < sheets.size(); i++) {
      Map<String, Double> values = other.result().calculations().get(i).values();
      assertEquals(sheets.get(i).values().keySet(), values.keySet(), key);
      sheets
          .get(i)
          .values()
          .forEach(
              (symbol, value) -> {
                double again = values.get(symbol);
                if (Math.abs(value - again) > CLOSING && !near(value, again, FOUR_FIGURES)) {
                  differences.add(key + ": " + symbol + " " + value + " and " + again);
                }
              });
    }
  }

  private static boolean near(double a, double b, double share) {
    return Double.compare(a, b) == 0
        || Math.abs(a - b) <= share * Math.max(Math.abs(a), Math.abs(b));
  }
}
