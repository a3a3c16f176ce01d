package pilefolio.output.xlsx;

import pilefolio.trace.ExpressionText;

/** The live comparison of a cell with the engine's number. */
final class Agreement {
  private static final String SHARE = "0.000001";

  private Agreement() {}

  /**
   * A condition: within one in a million, or within the noise of the last bits.
   *
   * @param live the live cell
   * @param engine the cell with the engine's number
   * @param noise what the last bits may make of it, in the unit of the cells
   */
  static String condition(String live, String engine, double noise) {
    return "ABS("
        + live
        + "-"
        + engine
        + ")<="
        + SHARE
        + "*ABS("
        + engine
        + ")"
        + (noise > 0 ? "+" + short3(noise) : "");
  }

  /** The words of the comparison. */
  static String of(String live, String engine, double noise) {
    return "IF("
        + condition(live, engine, noise)
        + ",\""
        + Marks.AGREES
        + "\",\""
        + Marks.DIFFERS
        + "\")";
  }

  /** Three digits are enough for a tolerance. */
  private static String short3(double noise) {
    return ExpressionText.number(
        new java.math.BigDecimal(noise)
            .round(new java.math.MathContext(3, java.math.RoundingMode.UP))
            .doubleValue());
  }
}
