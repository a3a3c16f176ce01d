package pilefolio.analysis.apparent;

import pilefolio.analysis.earth.OutsideRange;

/**
 * Active coefficient in soft clay with movement from below the base, after Henkel (1971) as
 * FHWA-IF-99-015 uses it for stability numbers above 6: K_a = 1 − 4·s_u/(γH) + 2√2·(d/H)·[1 −
 * 5.14·s_ub/(γH)], not less than 0.22.
 */
public final class DeepSeated {
  private static final double LEAST = 0.22;
  private static final double BEARING = 5.14;
  private static final double LEAST_NUMBER = 6;

  private DeepSeated() {}

  /**
   * The coefficient.
   *
   * @param gammaH γ·H, kPa
   * @param su undrained strength beside the excavation, kPa
   * @param suBelow undrained strength below its base, kPa
   * @param depthRatio thickness of the soft ground below the base over H, zero or more
   * @throws OutsideRange if the stability number is not above 6
   */
  public static double coefficient(double gammaH, double su, double suBelow, double depthRatio) {
    if (!(gammaH / su > LEAST_NUMBER)) {
      throw new OutsideRange(
          "the deep-seated term is for stability numbers above 6, not " + gammaH / su);
    }
    if (!(suBelow > 0 && depthRatio >= 0)) {
      throw new OutsideRange("strength below the base must be more than zero");
    }
    double below = term(gammaH, suBelow, depthRatio);
    return Math.max(LEAST, 1 - 4 * su / gammaH + below);
  }

  /** The term for the ground below the base; a base that is stable adds nothing. */
  public static double term(double gammaH, double suBelow, double depthRatio) {
    return 2 * Math.sqrt(2) * depthRatio * Math.max(0, 1 - BEARING * suBelow / gammaH);
  }
}
