package pilefolio.output.json;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pilefolio.output.SampleSubmittal;
import pilefolio.submittal.Submittal;
import pilefolio.trace.Exp4j;
import pilefolio.units.DisplaySystem;
import pilefolio.units.Units;

class RecordWriterTest {

  private static JsonNode record(DisplaySystem system) {
    return read(RecordWriter.write(SampleSubmittal.in(system), Map.of("made-question-1", 41)));
  }

  private static JsonNode read(byte[] record) {
    try {
      return new ObjectMapper().readTree(record);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "ten-piles, SI",
    "ten-piles, US",
    "car-park-basement, SI",
    "river-street-pump-station, US"
  })
  void everyLineGivesItsValueInAGeneralExpressionParser(String sample, DisplaySystem system) {
    int lines = 0;
    byte[] bytes = RecordWriter.write(SampleSubmittal.of(sample, system), Map.of());
    for (JsonNode check : read(bytes).path("checks")) {
      Map<String, Double> values = new HashMap<>();
      for (JsonNode line : check.path("lines")) {
        String where = check.path("id").asText() + ": " + line;
        double si = line.path("si").asDouble();
        assertEquals(si, Exp4j.value(line.path("substituted").asText()), tolerance(si), where);
        assertEquals(si, Exp4j.value(line.path("formula").asText(), values), tolerance(si), where);
        assertEquals(
            si,
            Units.of(line.path("unit").asText()).toSi(line.path("value").asDouble()),
            Math.abs(si) * 1e-11,
            where);
        assertNull(values.put(line.path("symbol").asText(), si), where);
        for (String side : List.of("left", "right")) {
          if (line.has(side)) {
            JsonNode one = line.path(side);
            double value = one.path("si").asDouble();
            assertEquals(
                value, Exp4j.value(one.path("substituted").asText()), tolerance(value), where);
          }
        }
        lines++;
      }
    }
    assertTrue(lines > 100, "only " + lines + " lines");
  }

  private static double tolerance(double value) {
    return 1e-9 * Math.abs(value);
  }

  @Test
  void aRequirementIsItsMarginAndSaysSo() {
    JsonNode check = check(record(DisplaySystem.SI), "made-question-2");
    int seen = 0;
    for (JsonNode line : check.path("lines")) {
      if (line.path("kind").asText().equals("requirement")) {
        assertEquals(line.path("satisfied").asBoolean(), line.path("si").asDouble() >= 0);
        double left = line.path("left").path("si").asDouble();
        double right = line.path("right").path("si").asDouble();
        boolean atMost = line.path("must").asText().equals("left <= right");
        assertEquals(atMost ? right - left : left - right, line.path("si").asDouble());
        seen++;
      }
    }
    assertEquals(3, seen);
  }

  @Test
  void tablesAreALineACellAndATotalNamesItsCells() {
    JsonNode check = check(record(DisplaySystem.SI), "made-question-1");
    assertEquals("sigma_v_1", line(check, "sigma_v_0_2").path("formula").asText());
    assertEquals("q", line(check, "sigma_v_0_1").path("formula").asText());
    assertEquals("sand", line(check, "P_2").path("row").asText());
    assertEquals("P_1 + P_2 + P_3", line(check, "P_a").path("formula").asText());
    assertEquals("max(max(p_1, p_2), p_3)", line(check, "p_m").path("formula").asText());
    assertEquals("otherwise", line(check, "p_3").path("condition").asText());
    assertEquals(
        "s_u <= 50000 and D < 2",
        line(check(record(DisplaySystem.US), "made-question-2"), "alpha")
            .path("condition")
            .asText());
  }

  @Test
  void verdictsAreInTheWordsOfTheDocuments() {
    JsonNode record = record(DisplaySystem.SI);
    JsonNode noCapacity = check(record, "made-question-1");
    assertEquals("not satisfied", noCapacity.path("result").asText());
    assertTrue(noCapacity.path("utilisation").isNull());
    assertFalse(noCapacity.path("note").asText().isEmpty());
    assertEquals(41, noCapacity.path("page").asInt());
    assertEquals("derived", check(record, "made-values-1").path("result").asText());
    assertTrue(check(record, "made-values-1").path("page").isNull());
    JsonNode last = record.path("notChecked").get(record.path("notChecked").size() - 1);
    assertEquals("made-question", last.path("id").asText());
    assertEquals("run B", last.path("subject").asText());
    assertEquals("There is no rating of the rig.", last.path("reason").asText());
  }

  @Test
  void fieldsStandInTheOrderOfTheContract() {
    JsonNode record = record(DisplaySystem.SI);
    assertEquals(
        List.of("project", "basis", "inputs", "checks", "notChecked", "engine"), names(record));
    assertEquals(
        List.of("sheet", "cell", "name", "value", "unit", "si"),
        names(record.path("inputs").get(0)));
    assertEquals(
        List.of("id", "title", "subject", "result", "utilisation", "page"),
        names(check(record, "made-question-1")).subList(0, 6));
    assertEquals(
        List.of("symbol", "formula", "substituted", "value", "unit", "si", "source"),
        names(line(check(record, "made-question-1"), "K_a")).subList(0, 7));
    assertEquals("version", names(record.path("engine")).get(0));
    assertEquals(64, record.path("engine").path("input_sha256").asText().length());
    Set<String> cells = new HashSet<>();
    record.path("inputs").forEach(i -> cells.add(i.path("cell").asText()));
    assertTrue(cells.stream().anyMatch(c -> c.matches("[A-Z]+[0-9]+")), cells.toString());
  }

  @Test
  void theSameSubmittalGivesTheSameBytesAndNoNumberIsNotANumber() {
    Submittal submittal = SampleSubmittal.in(DisplaySystem.SI);
    byte[] first = RecordWriter.write(submittal, Map.of());
    assertArrayEquals(first, RecordWriter.write(SampleSubmittal.in(DisplaySystem.SI), Map.of()));
    String text = new String(first, StandardCharsets.UTF_8);
    assertFalse(text.contains("NaN") || text.contains("Infinity"));
    assertFalse(text.contains("\r"));
    assertTrue(text.contains("φ'_k") || text.contains("φ’_k"));
  }

  private static JsonNode check(JsonNode record, String anchor) {
    return find(record.path("checks"), "anchor", anchor);
  }

  private static JsonNode line(JsonNode check, String symbol) {
    return find(check.path("lines"), "symbol", symbol);
  }

  private static JsonNode find(JsonNode list, String field, String value) {
    return StreamSupport.stream(list.spliterator(), false)
        .filter(node -> node.path(field).asText().equals(value))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no " + field + " " + value));
  }

  private static List<String> names(JsonNode node) {
    return node.properties().stream().map(Map.Entry::getKey).toList();
  }
}
