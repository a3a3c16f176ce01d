package pilefolio.output.pdf.math;

import java.util.List;

/** A formula as read. */
public sealed interface Tex {

  /** Decides the space beside a symbol. */
  enum Kind {
    /** Variable, number, unit. */
    ORDINARY,
    /** Function name or sum sign. */
    FUNCTION,
    /** Plus, minus, times. */
    BINARY,
    /** Equals, less than. */
    RELATION,
    /** Opening bracket. */
    OPEN,
    /** Closing bracket. */
    CLOSE,
    /** Comma. */
    PUNCTUATION,
    /** Fraction or a pair of tall brackets. */
    INNER
  }

  /**
   * Parts side by side.
   *
   * @param items from left to right
   */
  record Row(List<Tex> items) implements Tex {
    /** Copies the list. */
    public Row {
      items = List.copyOf(items);
    }
  }

  /**
   * Characters set together.
   *
   * @param text the characters
   * @param italic whether slanted
   * @param kind decides the space beside it
   */
  record Symbol(String text, boolean italic, Kind kind) implements Tex {}

  /**
   * Extra space.
   *
   * @param em width as a multiple of the letter size
   */
  record Space(double em) implements Tex {}

  /**
   * A fraction.
   *
   * @param over numerator
   * @param under denominator
   */
  record Fraction(Tex over, Tex under) implements Tex {}

  /**
   * A root.
   *
   * @param index small number at the sign, or null
   * @param of what stands under the sign
   */
  record Root(Tex index, Tex of) implements Tex {}

  /**
   * A base with lowered and raised parts.
   *
   * @param base what they belong to
   * @param primes number of primes
   * @param sub lowered part, or null
   * @param sup raised part, or null
   */
  record Scripts(Tex base, int primes, Tex sub, Tex sup) implements Tex {}

  /**
   * Brackets as tall as what they hold.
   *
   * @param open opening bracket, empty for none
   * @param body content
   * @param close closing bracket, empty for none
   */
  record Fence(String open, Tex body, String close) implements Tex {}

  /**
   * A line over the content.
   *
   * @param of content
   */
  record Overline(Tex of) implements Tex {}

  /**
   * Rows below each other, left-aligned in columns, as for the branches of a piecewise value.
   *
   * @param rows rows of cells
   */
  record Table(List<List<Tex>> rows) implements Tex {
    /** Copies the rows. */
    public Table {
      rows = rows.stream().map(List::copyOf).toList();
    }
  }
}
