package pilefolio.submittal.method;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.lang.reflect.RecordComponent;
import java.util.Collection;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pilefolio.submittal.Submittal;

/** Every number that is printed stands in the content: none is made up by a template. */
class TracedNumbersTest {
  private static final Pattern NUMBER = Pattern.compile("\\d+(?:\\.\\d+)?");
  // Counted by the template: chapters, steps, rows of the inspection plan, scores, counts of
  // results.
  private static final Pattern COUNTED =
      Pattern.compile(
          "<head>.*?</head>"
              + "|<div class=\"toc\">.*?</div>"
              + "|<span class=\"n\">\\d+</span>"
              + "|<a class=\"ref\" href=\"#\\w+\">chapter \\d+</a>"
              + "|<td class=\"step\">\\d+</td>"
              + "|<td class=\"score\">.*?</td>"
              + "|<tr><td>\\d+</td><td>(?=[^<]*</td><td>(?:(?!</tr>).)*class=\"mid\")"
              + "|\\d+ not (?:satisfied|checked)",
          Pattern.DOTALL);

  @ParameterizedTest
  @ValueSource(strings = {"ten-piles", "river-street-pump-station", "car-park-basement"})
  void everyNumberIsInTheContent(String sample) throws ReflectiveOperationException {
    Submittal submittal = Scenario.sample(sample).submittal();
    Set<String> known = new TreeSet<>();
    collect(MethodStatement.of(submittal), known);
    String visible =
        COUNTED
            .matcher(MethodStatementTest.text(submittal))
            .replaceAll(" ")
            .replaceAll("<[^>]*>|&#\\d+;", " ");
    Set<String> strange = new TreeSet<>(numbers(visible));
    strange.removeAll(known);
    assertEquals(Set.of(), strange);
  }

  private static Set<String> numbers(String text) {
    Set<String> numbers = new TreeSet<>();
    Matcher matcher = NUMBER.matcher(text);
    while (matcher.find()) {
      numbers.add(matcher.group());
    }
    return numbers;
  }

  private static void collect(Object value, Set<String> numbers)
      throws ReflectiveOperationException {
    if (value instanceof String text) {
      numbers.addAll(numbers(text));
    } else if (value instanceof Collection<?> items) {
      for (Object item : items) {
        collect(item, numbers);
      }
    } else if (value instanceof Map<?, ?> map) {
      collect(map.values(), numbers);
    } else if (value instanceof Record record) {
      for (RecordComponent part : record.getClass().getRecordComponents()) {
        part.getAccessor().setAccessible(true);
        collect(part.getAccessor().invoke(record), numbers);
      }
    }
  }
}
