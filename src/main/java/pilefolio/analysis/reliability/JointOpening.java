package pilefolio.analysis.reliability;

import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.hipparchus.distribution.discrete.PoissonDistribution;

/**
 * Probability that the joint of two neighbouring piles is open in one horizontal plane. Deviations
 * of each pile are normal and independent on each axis. The formulas follow from that model alone;
 * they do not include obstructions or operator error.
 */
public final class JointOpening {
  /** Beyond this many standard deviations a normal or Poisson tail is below double precision. */
  private static final double FAR = 40;

  private static final GaussIntegrator PANEL = new GaussIntegratorFactory().legendre(16, -1.0, 1.0);

  private JointOpening() {}

  /**
   * Movement along the wall only; exact.
   *
   * @param overlap overlap as set out, mm
   * @param sigma standard deviation of one pile on one axis at the depth, mm, zero or more
   * @return probability that the joint is open
   */
  public static double alongWall(double overlap, double sigma) {
    return alongWall(overlap, sigma, 0);
  }

  /**
   * Movement along the wall only, neighbours correlated because one steers the other; exact.
   *
   * @param overlap overlap as set out, mm
   * @param sigma standard deviation of one pile on one axis at the depth, mm, zero or more
   * @param correlation correlation of the two piles' movements, −1 to below 1
   * @return probability that the joint is open
   * @throws IllegalArgumentException if the correlation or sigma is out of range
   */
  public static double alongWall(double overlap, double sigma, double correlation) {
    if (!(correlation >= -1 && correlation < 1)) {
      throw new IllegalArgumentException("correlation must be from −1 to below 1: " + correlation);
    }
    requireSpread(sigma);
    return NormalTail.above(ratio(overlap, sigma * Math.sqrt(2 * (1 - correlation))));
  }

  /**
   * Movement on both axes with equal spread; exact. The centre distance follows a Rice
   * distribution, so the probability is the Marcum Q function of order one, which is summed here as
   * a Poisson mixture (the upper tail of a non-central chi-square with two degrees of freedom).
   *
   * @param spacing spacing as set out, mm
   * @param reach sum of the two radii, mm
   * @param sigma standard deviation of one pile on one axis at the depth, mm, zero or more
   * @return probability that the joint is open
   */
  public static double bothAxes(double spacing, double reach, double sigma) {
    requireSpread(sigma);
    if (sigma == 0) {
      return spacing > reach ? 1 : 0;
    }
    return marcumQ(spacing / (Math.sqrt(2) * sigma), reach / (Math.sqrt(2) * sigma));
  }

  /**
   * Marcum Q function of order one.
   *
   * @param a distance ratio, zero or more
   * @param b limit ratio, zero or more
   * @return probability that a Rice variable with parameter a exceeds b
   */
  static double marcumQ(double a, double b) {
    double half = a * a / 2;
    double limit = b * b / 2;
    if (limit == 0) {
      return 1;
    }
    if (half == 0) {
      return Math.exp(-limit);
    }
    PoissonDistribution mixing = new PoissonDistribution(half);
    PoissonDistribution counting = new PoissonDistribution(limit);
    int last = (int) (Math.max(half, limit) + FAR * Math.sqrt(Math.max(half, limit)) + FAR);
    int first = (int) Math.max(0, Math.min(half, limit) - FAR * Math.sqrt(Math.max(half, limit)));
    double atMost = 0;
    double sum = 0;
    for (int k = first; k <= last; k++) {
      atMost += counting.probability(k);
      sum += mixing.probability(k) * atMost;
    }
    return Math.min(1, sum);
  }

  /**
   * Movement on both axes with different spread along and across the wall, by one integral over the
   * relative movement across the wall.
   *
   * @param spacing spacing as set out, mm
   * @param reach sum of the two radii, mm
   * @param along standard deviation of one pile along the wall, mm, above zero
   * @param across standard deviation of one pile across the wall, mm, above zero
   * @return probability that the joint is open
   */
  public static double bothAxes(double spacing, double reach, double along, double across) {
    if (!(along > 0) || !(across > 0)) {
      throw new IllegalArgumentException("both standard deviations must be above zero");
    }
    double sx = Math.sqrt(2) * along;
    double sy = Math.sqrt(2) * across;
    // y = reach · sin t removes the root's vertical tangent at |y| = reach.
    double end = Math.asin(Math.min(1, FAR * sy / reach));
    int panels = 96;
    double step = 2 * end / panels;
    double sum = 0;
    for (int i = 0; i < panels; i++) {
      double middle = -end + (i + 0.5) * step;
      sum +=
          PANEL.integrate(
                  u -> {
                    double t = middle + u * step / 2;
                    double half = reach * Math.cos(t);
                    double open =
                        NormalTail.above((half - spacing) / sx)
                            + NormalTail.above((half + spacing) / sx);
                    return NormalTail.density(reach * Math.sin(t) / sy) / sy * open * half;
                  })
              * step
              / 2;
    }
    return Math.min(1, sum + 2 * NormalTail.above(reach / sy));
  }

  /**
   * Probability that two neighbouring joints are both open, movement along the wall only. The two
   * joints share a pile, so their movements have the correlation −½.
   *
   * @param overlap overlap as set out, mm
   * @param sigma standard deviation of one pile on one axis at the depth, mm, above zero
   * @return probability that both are open
   */
  public static double bothOfTwo(double overlap, double sigma) {
    if (!(sigma > 0)) {
      throw new IllegalArgumentException("the standard deviation must be above zero");
    }
    return bothAbove(overlap / (Math.sqrt(2) * sigma), -0.5);
  }

  /** Probability that both of two correlated standard normal values exceed a. */
  static double bothAbove(double a, double correlation) {
    double from = Math.max(a, -FAR);
    double to = Math.max(a, 0) + FAR;
    double spread = Math.sqrt(1 - correlation * correlation);
    int panels = 160;
    double step = (to - from) / panels;
    double sum = 0;
    for (int i = 0; i < panels; i++) {
      double middle = from + (i + 0.5) * step;
      sum +=
          PANEL.integrate(
                  u -> {
                    double x = middle + u * step / 2;
                    return NormalTail.density(x) * NormalTail.above((a - correlation * x) / spread);
                  })
              * step
              / 2;
    }
    return sum;
  }

  /**
   * Depth at which a joint's probability of opening reaches a target, movement along the wall only.
   *
   * @param overlap overlap as set out, mm
   * @param spread spread of one pile
   * @param target probability, above 0 and below ½
   * @return the depth, m; zero if the target is exceeded at the top, infinite if never reached
   */
  public static double depthAlongWall(double overlap, PileSpread spread, double target) {
    if (!(target > 0 && target < 0.5)) {
      throw new IllegalArgumentException("the target must be above 0 and below ½: " + target);
    }
    return overlap <= 0
        ? 0
        : spread.depthOf(overlap / (Math.sqrt(2) * NormalTail.exceeded(target)));
  }

  /**
   * Depth at which a joint's probability of opening reaches a target, movement on both axes.
   *
   * @param spacing spacing as set out, mm
   * @param reach sum of the two radii, mm
   * @param spread spread of one pile
   * @param target probability, above 0 and below ½
   * @return the depth, m; zero if the target is exceeded at the top, infinite if never reached
   */
  public static double depthBothAxes(
      double spacing, double reach, PileSpread spread, double target) {
    // The along-wall depth is never the smaller one, so it bounds the search from below ground.
    double deepest = depthAlongWall(reach - spacing, spread, target);
    if (deepest == 0 || bothAxes(spacing, reach, spread.at(0)) >= target) {
      return 0;
    }
    if (Double.isInfinite(deepest)) {
      return deepest;
    }
    return new BrentSolver(1e-12, 1e-10)
        .solve(200, z -> bothAxes(spacing, reach, spread.at(z)) - target, 0, deepest);
  }

  private static void requireSpread(double sigma) {
    if (!(sigma >= 0)) {
      throw new IllegalArgumentException("a standard deviation cannot be negative: " + sigma);
    }
  }

  /** Overlap in standard deviations; with no spread the joint is surely closed or surely open. */
  private static double ratio(double overlap, double spread) {
    if (spread > 0) {
      return overlap / spread;
    }
    if (overlap == 0) {
      return 0;
    }
    return overlap > 0 ? Double.POSITIVE_INFINITY : Double.NEGATIVE_INFINITY;
  }
}
