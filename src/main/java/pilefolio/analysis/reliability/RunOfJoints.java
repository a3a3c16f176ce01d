package pilefolio.analysis.reliability;

/**
 * Probability that any joint of a run of equal joints is open, with movement along the wall only.
 * Neighbouring joints share a pile and are therefore not independent. The run is followed pile by
 * pile: the density of the position of pile k, given that all joints before it are closed, times
 * the chance that the next joint stays closed. Exact for the model but for the grid, which is
 * refined until the answer stands still.
 *
 * @param anyOpen probability that at least one joint is open
 * @param expectedOpen expected number of open joints, N·P
 * @param independent what N independent joints would give, for comparison only
 * @param gridStep step of the finest grid, in standard deviations of one pile
 * @param gridChange change of the answer at the last halving of the grid
 */
public record RunOfJoints(
    double anyOpen, double expectedOpen, double independent, double gridStep, double gridChange) {
  private static final double EDGE = 9;
  private static final double CONVERGED = 1e-9;
  private static final double FINEST = 1.0 / 512;

  /**
   * Follows a run of joints.
   *
   * @param joints number of joints, one or more
   * @param overlap overlap as set out, mm
   * @param sigma standard deviation of one pile on one axis at the depth, mm, above zero
   * @return the probabilities
   * @throws IllegalArgumentException if there is no joint or no spread
   */
  public static RunOfJoints of(int joints, double overlap, double sigma) {
    if (joints < 1 || !(sigma > 0) || !Double.isFinite(overlap)) {
      throw new IllegalArgumentException("needs at least one joint and a spread above zero");
    }
    double limit = overlap / sigma;
    double one = JointOpening.alongWall(overlap, sigma);
    double step = 1.0 / 16;
    double open = follow(joints, limit, step);
    double change = Double.POSITIVE_INFINITY;
    while (change > CONVERGED && step > FINEST) {
      step /= 2;
      double finer = follow(joints, limit, step);
      change = Math.abs(finer - open);
      open = finer;
    }
    return new RunOfJoints(
        open, joints * one, -Math.expm1(joints * Math.log1p(-one)), step, change);
  }

  private static double follow(int joints, double limit, double step) {
    int points = (int) Math.round(2 * EDGE / step) + 1;
    double[] density = new double[points];
    for (int i = 0; i < points; i++) {
      density[i] = NormalTail.density(-EDGE + i * step);
    }
    double[] now = density.clone();
    double[] tail = new double[points];
    for (int joint = 0; joint < joints; joint++) {
      tails(now, step, tail);
      double[] next = new double[points];
      for (int i = 0; i < points; i++) {
        next[i] = density[i] * tailAt(now, tail, step, -EDGE + i * step - limit);
      }
      now = next;
    }
    tails(now, step, tail);
    return Math.max(0, 1 - tail[0]);
  }

  /** Integral of g from each grid point to the right edge, by a rule exact for cubics. */
  private static void tails(double[] g, double step, double[] tail) {
    int n = g.length;
    tail[n - 1] = 0;
    for (int i = n - 2; i >= 0; i--) {
      // Beyond both edges the density is below 1e-18 and counts as zero.
      double before = i > 0 ? g[i - 1] : 0;
      double after = i + 2 < n ? g[i + 2] : 0;
      tail[i] = tail[i + 1] + step / 24 * (-before + 13 * g[i] + 13 * g[i + 1] - after);
    }
  }

  /** The tail integral between grid points: a cubic with the known end slopes −g. */
  private static double tailAt(double[] g, double[] tail, double step, double x) {
    double place = (x + EDGE) / step;
    if (place <= 0) {
      return tail[0];
    }
    int i = (int) Math.floor(place);
    if (i >= g.length - 1) {
      return 0;
    }
    double t = place - i;
    double u = 1 - t;
    return tail[i] * u * u * (1 + 2 * t)
        + tail[i + 1] * t * t * (3 - 2 * t)
        + step * (-g[i] * t * u * u + g[i + 1] * t * t * u);
  }
}
