package pilefolio.analysis.apparent;

import pilefolio.analysis.earth.OutsideRange;

/**
 * How an excavation in clay behaves, by its stability number γH/c. Limits after Terzaghi and Peck
 * (1967), Peck (1969): up to 4 the diagram of stiff clay, above it that of soft to medium clay, the
 * larger of the two near the limit; above 6 clay below the base yields too.
 */
public enum ClayClass {
  /** Up to 4. */
  STIFF,
  /** Above 4 and up to 6. */
  SOFT_TO_MEDIUM,
  /** Above 6: the ground moves from below the base as well where the clay continues there. */
  SOFT;

  private static final double STIFF_LIMIT = 4;
  private static final double BASE_LIMIT = 6;

  /**
   * Stability number.
   *
   * @param gamma unit weight, kN/m³
   * @param height depth of excavation, m
   * @param su undrained strength, kPa
   * @throws OutsideRange if a value is not more than zero
   */
  public static double stabilityNumber(double gamma, double height, double su) {
    if (!(gamma > 0 && height > 0 && su > 0)) {
      throw new OutsideRange("unit weight, height and strength must be more than zero");
    }
    return gamma * height / su;
  }

  /** The class of a stability number. */
  public static ClayClass of(double stabilityNumber) {
    if (stabilityNumber <= STIFF_LIMIT) {
      return STIFF;
    }
    return stabilityNumber <= BASE_LIMIT ? SOFT_TO_MEDIUM : SOFT;
  }
}
