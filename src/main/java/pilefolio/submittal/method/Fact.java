package pilefolio.submittal.method;

import java.util.Objects;

/**
 * A number or a name as the method statement prints it, with where it comes from.
 *
 * @param text final text, unit included
 * @param source a cell such as {@code Walls!D7}, a calculation such as {@code Calculations 9.3}, or
 *     how the value is known
 */
public record Fact(String text, String source) {
  /** Checks that neither part is empty: a number without a source is not printed. */
  public Fact {
    Objects.requireNonNull(text);
    if (text.isEmpty() || source.isEmpty()) {
      throw new IllegalArgumentException("a fact needs a text and a source: " + text);
    }
  }
}
