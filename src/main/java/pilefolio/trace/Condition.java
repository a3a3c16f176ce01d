package pilefolio.trace;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import pilefolio.units.Dimension;

/**
 * One or more comparisons that must all hold, as {@code 0.2 < x/L ≤ 0.5} is written {@code 0.2 <
 * x/L and x/L ≤ 0.5}.
 *
 * @param text as written
 * @param parts the comparisons
 */
public record Condition(String text, List<Comparison> parts) {

  /** The sign of a comparison. */
  public enum Sign {
    /** At most. */
    AT_MOST("≤"),
    /** At least. */
    AT_LEAST("≥"),
    /** Less than. */
    LESS("<"),
    /** More than. */
    MORE(">");

    /** Relative size of what a few operations lose, far below any digit printed. */
    private static final double NOISE = 4e-15;

    private final String text;

    Sign(String text) {
      this.text = text;
    }

    /** The sign as printed. */
    public String text() {
      return text;
    }

    /**
     * Whether the comparison holds, unrounded. Sides that differ only by the noise of the last bits
     * are equal.
     */
    public boolean holds(double left, double right) {
      boolean equal = Math.abs(left - right) <= NOISE * Math.max(Math.abs(left), Math.abs(right));
      return switch (this) {
        case AT_MOST -> equal || left < right;
        case AT_LEAST -> equal || left > right;
        case LESS -> !equal && left < right;
        case MORE -> !equal && left > right;
      };
    }
  }

  /**
   * A comparison of two expressions.
   *
   * @param left the left side
   * @param sign the sign
   * @param right the right side
   */
  public record Comparison(Formula left, Sign sign, Formula right) {
    /** Whether it holds, unrounded. */
    public boolean holds(ToDoubleFunction<String> value) {
      return sign.holds(left.evaluate(value), right.evaluate(value));
    }
  }

  /**
   * Reads a condition.
   *
   * @throws FormulaException if the text is not in the notation
   */
  public static Condition of(String text) {
    List<Comparison> parts = new ArrayList<>();
    for (String part : text.split(" and ", -1)) {
      parts.add(comparison(part));
    }
    return new Condition(text, List.copyOf(parts));
  }

  private static Comparison comparison(String text) {
    for (Sign sign : Sign.values()) {
      int at = text.indexOf(sign.text());
      if (at > 0) {
        return new Comparison(
            Formula.of(text.substring(0, at).strip()),
            sign,
            Formula.of(text.substring(at + 1).strip()));
      }
    }
    throw new FormulaException("in \"" + text + "\": expected one of ≤ ≥ < >");
  }

  /** Whether every comparison holds, unrounded. */
  public boolean holds(ToDoubleFunction<String> value) {
    return parts.stream().allMatch(part -> part.holds(value));
  }

  /** The symbols used. */
  public Set<String> symbols() {
    Set<String> names = new LinkedHashSet<>();
    for (Comparison part : parts) {
      names.addAll(part.left().symbols());
      names.addAll(part.right().symbols());
    }
    return names;
  }

  /**
   * Checks that both sides of every comparison have one dimension.
   *
   * @throws FormulaException with the condition in its message
   */
  public void checkDimensions(Map<String, Dimension> dimensions) {
    for (Comparison part : parts) {
      try {
        DimensionRule.same(
            DimensionRule.of(part.left().expr(), dimensions),
            DimensionRule.of(part.right().expr(), dimensions),
            "compared with");
      } catch (FormulaException e) {
        throw new FormulaException("in \"" + text + "\": " + e.getMessage());
      }
    }
  }
}
