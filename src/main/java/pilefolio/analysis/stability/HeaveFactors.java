package pilefolio.analysis.stability;

import pilefolio.analysis.earth.OutsideRange;

/** Bearing-capacity factors N_c for the base of an excavation in undrained ground. */
public final class HeaveFactors {
  /** Depth over width of the chart. */
  private static final double[] RATIO = {0, 1, 2, 3, 4};

  private static final double[] STRIP = {5.14, 6.4, 7.0, 7.3, 7.5};
  private static final double[] SQUARE = {6.2, 7.7, 8.4, 8.8, 9.0};
  private static final double SKEMPTON_DEEPEST = 2.5;

  private HeaveFactors() {}

  /**
   * N_c of a long excavation from the chart of Bjerrum and Eide (1956), from memory; linear between
   * its points, constant from a ratio of 4.
   *
   * @param depthRatio depth over width, zero or more
   * @throws OutsideRange if the ratio is negative
   */
  public static double bjerrumEideStrip(double depthRatio) {
    return read(STRIP, depthRatio);
  }

  /**
   * N_c of a square or round excavation from the chart of Bjerrum and Eide (1956), from memory.
   *
   * @param depthRatio depth over width, zero or more
   * @throws OutsideRange if the ratio is negative
   */
  public static double bjerrumEideSquare(double depthRatio) {
    return read(SQUARE, depthRatio);
  }

  /**
   * N_c of a rectangular excavation: that of a square times 0.84 + 0.16·B/L.
   *
   * @param depthRatio depth over width, zero or more
   * @param planRatio width over length, more than 0 and not more than 1
   * @throws OutsideRange if a ratio leaves its range
   */
  public static double bjerrumEide(double depthRatio, double planRatio) {
    requirePlan(planRatio);
    return bjerrumEideSquare(depthRatio) * (0.84 + 0.16 * planRatio);
  }

  /**
   * N_c after Skempton (1951): 5·(1 + 0.2·H/B)·(1 + 0.2·B/L), from H/B = 2.5 on 7.5·(1 + 0.2·B/L).
   *
   * @param depthRatio depth over width, zero or more
   * @param planRatio width over length, 0 (long) to 1 (square)
   * @throws OutsideRange if a ratio leaves its range
   */
  public static double skempton(double depthRatio, double planRatio) {
    if (!(depthRatio >= 0)) {
      throw new OutsideRange("depth over width must be zero or more, is " + depthRatio);
    }
    if (planRatio != 0) {
      requirePlan(planRatio);
    }
    return 5 * (1 + 0.2 * Math.min(depthRatio, SKEMPTON_DEEPEST)) * (1 + 0.2 * planRatio);
  }

  private static void requirePlan(double planRatio) {
    if (!(planRatio > 0 && planRatio <= 1)) {
      throw new OutsideRange("width over length must lie between 0 and 1, is " + planRatio);
    }
  }

  private static double read(double[] chart, double depthRatio) {
    if (!(depthRatio >= 0)) {
      throw new OutsideRange("depth over width must be zero or more, is " + depthRatio);
    }
    int last = RATIO.length - 1;
    if (depthRatio >= RATIO[last]) {
      return chart[last];
    }
    int i = (int) depthRatio;
    return chart[i] + (chart[i + 1] - chart[i]) * (depthRatio - RATIO[i]);
  }
}
