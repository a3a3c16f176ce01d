package pilefolio.submittal.method;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import pilefolio.checks.Check;
import pilefolio.checks.Checks;

/** The wording holds no numbers: they come from the content with their source. */
class TemplateNumbersTest {
  private static final Pattern DIGIT = Pattern.compile("\\d");
  private static final Pattern COMMENT = Pattern.compile("<#--.*?-->", Pattern.DOTALL);
  private static final Pattern VALUE = Pattern.compile("\\$\\{[^}]*}");
  private static final Pattern TAG = Pattern.compile("<[^>]*>");
  private static final Pattern LITERAL = Pattern.compile("\"([^\"]*)\"");

  static List<Path> templates() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("templates"))) {
      return files.filter(f -> f.getFileName().toString().startsWith("method-")).sorted().toList();
    }
  }

  @Test
  void wordingHasNoDigits() throws IOException {
    List<String> found = new ArrayList<>();
    for (Path file : templates()) {
      // The arrow of a lambda is no end of a tag.
      String text = COMMENT.matcher(Files.readString(file)).replaceAll("").replace("->", "");
      String words = TAG.matcher(VALUE.matcher(text).replaceAll("")).replaceAll("\n");
      words.lines().filter(line -> DIGIT.matcher(line).find()).forEach(found::add);
    }
    assertEquals(List.of(), found);
  }

  /** Sentences handed to macros have none either; widths, classes and keys have no spaces. */
  @Test
  void sentencesInDirectivesHaveNoDigits() throws IOException {
    List<String> found = new ArrayList<>();
    for (Path file : templates()) {
      String text = COMMENT.matcher(Files.readString(file)).replaceAll("");
      Matcher literals = LITERAL.matcher(text);
      while (literals.find()) {
        String words = literals.group(1);
        if (words.strip().contains(" ")
            && !words.contains("<")
            && DIGIT.matcher(VALUE.matcher(words).replaceAll("")).find()) {
          found.add(file.getFileName() + ": " + words);
        }
      }
    }
    assertEquals(List.of(), found);
  }

  /** A line that a step names is a line of a check. */
  @Test
  void everyPickIsALineOfACheck() {
    for (Pick pick : Pick.ALL) {
      Check check =
          Checks.ALL.stream()
              .filter(c -> c.id().equals(pick.check()))
              .findFirst()
              .orElseThrow(() -> new AssertionError("no check " + pick.check()));
      assertTrue(
          check.sheets().stream().anyMatch(s -> s.symbols().containsKey(pick.symbol())),
          pick.check() + " has no " + pick.symbol());
    }
  }
}
