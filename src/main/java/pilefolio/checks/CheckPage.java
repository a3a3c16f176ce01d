package pilefolio.checks;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The page of a check: what it asks, how it answers, where it holds, where it comes from.
 *
 * @param question the question, one or two sentences
 * @param method how it is answered
 * @param limits where the method holds
 * @param sources documents, each with how it is known
 */
public record CheckPage(String question, String method, String limits, String sources) {

  /**
   * Reads the page of a check.
   *
   * @throws IllegalArgumentException if there is no page or a part is missing
   */
  public static CheckPage of(String id) {
    Map<String, String> parts = parts(id);
    return new CheckPage(
        part(id, parts, "Question"),
        part(id, parts, "Method"),
        part(id, parts, "Limits of validity"),
        part(id, parts, "Sources"));
  }

  private static String part(String id, Map<String, String> parts, String name) {
    String text = parts.getOrDefault(name, "");
    if (text.isEmpty()) {
      throw new IllegalArgumentException("the page of " + id + " has no \"## " + name + "\"");
    }
    return text;
  }

  private static Map<String, String> parts(String id) {
    String file = "/checks/" + id + ".md";
    try (InputStream in = CheckPage.class.getResourceAsStream(file)) {
      if (in == null) {
        throw new IllegalArgumentException("no page " + file);
      }
      Map<String, String> parts = new LinkedHashMap<>();
      String name = "";
      for (String line : new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList()) {
        if (line.startsWith("## ")) {
          name = line.substring(3).strip();
        } else if (!line.startsWith("# ")) {
          String text = line.strip();
          parts.merge(
              name,
              text,
              (a, b) ->
                  b.isEmpty() || b.startsWith("- ")
                      ? a + "\n" + b
                      : a.isEmpty() || a.endsWith("\n") ? a + b : a + " " + b);
        }
      }
      parts.replaceAll((key, text) -> text.strip());
      return parts;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
