package pilefolio.analysis.staged;

/**
 * Newton's method on the energy of a stage, with the exact tangent and a search along each step.
 * The energy is convex and made of parabolas, so every step lowers it, and once the right ground is
 * plastic the next step is exact.
 */
final class StageIteration {
  private static final double TOLERANCE = 1e-8;
  private static final double TOLERANCE_OF_ROUNDING = 1e-6;
  private static final double LEAST_PIVOT = 1e-12;
  private static final double SOFT = 1e-4;
  private static final double RUNAWAY = 1e3;

  private final StageEquations equations;
  private final double displacementLimit;
  private final double length;
  private final BandedSystem system;
  private final double[] g;
  private final double[] d;
  private final double[] trial;
  private final double[] gTrial;
  private int steps;

  StageIteration(StageEquations equations, double displacementLimit) {
    this.equations = equations;
    this.displacementLimit = displacementLimit;
    length = equations.mesh().top() - equations.mesh().toe();
    int n = equations.unknowns();
    system = new BandedSystem(n);
    g = new double[n];
    d = new double[n];
    trial = new double[n];
    gTrial = new double[n];
  }

  int steps() {
    return steps;
  }

  /**
   * Moves the unknowns to equilibrium; false if they run away or the steps are used up. May be
   * asked again to go on.
   */
  boolean solve(double[] u, int mostSteps) {
    double bestRatio = Double.POSITIVE_INFINITY;
    int stalled = 0;
    equations.outOfBalance(u, g);
    for (int i = 0; i < mostSteps; i++, steps++) {
      double ratio = outOfBalanceRatio(u);
      if (ratio < TOLERANCE) {
        return true;
      }
      stalled = ratio < 0.5 * bestRatio ? 0 : stalled + 1;
      bestRatio = Math.min(bestRatio, ratio);
      // Rounding can stop very stiff walls a little short.
      if (stalled > 5 && ratio < TOLERANCE_OF_ROUNDING) {
        return true;
      }
      if (!step(u) || largest(u) > RUNAWAY * displacementLimit) {
        return false;
      }
    }
    return false;
  }

  private double outOfBalanceRatio(double[] u) {
    double force = equations.appliedForce(u);
    double worst = 0;
    for (int i = 0; i < g.length; i += 2) {
      worst = Math.max(worst, Math.abs(g[i]));
      worst = Math.max(worst, Math.abs(g[i + 1]) / length);
    }
    return worst / force;
  }

  private boolean step(double[] u) {
    equations.tangent(u, 0, system);
    if (!system.factorise(LEAST_PIVOT)) {
      double k = equations.greatestModulus();
      double extra = k > 0 ? SOFT * k : equations.appliedForce(u) / (length * displacementLimit);
      equations.tangent(u, extra, system);
      if (!system.factorise(0)) {
        return false;
      }
    }
    double slope = 0;
    for (int i = 0; i < d.length; i++) {
      d[i] = -g[i];
    }
    system.solve(d);
    for (int i = 0; i < d.length; i++) {
      slope += d[i] * g[i];
    }
    if (!(slope < 0)) {
      return false;
    }
    double share = search(u, slope);
    if (!(share > 0)) {
      return false;
    }
    move(u, share);
    System.arraycopy(trial, 0, u, 0, u.length);
    System.arraycopy(gTrial, 0, g, 0, g.length);
    return true;
  }

  // Share of the step at which the energy is nearly least along it.
  private double search(double[] u, double slope) {
    double s0 = -slope;
    double low = 0;
    double fLow = slope;
    double high = 1;
    double fHigh = move(u, 1);
    while (fHigh < -0.5 * s0) {
      low = high;
      fLow = fHigh;
      high *= 2;
      fHigh = move(u, high);
      if (largest(trial) > RUNAWAY * displacementLimit) {
        return high;
      }
    }
    if (fHigh <= overshoot() * s0) {
      return high;
    }
    double best = low;
    for (int i = 0; i < 60; i++) {
      double at = low + (high - low) * -fLow / (fHigh - fLow);
      // Keeps the secant away from ends at which it would creep.
      at = Math.max(low + 0.05 * (high - low), Math.min(high - 0.05 * (high - low), at));
      double f = move(u, at);
      if (f <= 0) {
        low = at;
        fLow = f;
        best = at;
        if (f > -0.1 * s0) {
          return at;
        }
      } else {
        high = at;
        fHigh = f;
        if (f < overshoot() * s0) {
          return at;
        }
      }
    }
    return best > 0 ? best : high;
  }

  // A wall near its limit load resists far movement by very little; that must not be overlooked.
  private double overshoot() {
    return largest(trial) > displacementLimit ? 0 : 1e-3;
  }

  // Slope of the energy along the step after a share of it.
  private double move(double[] u, double share) {
    for (int i = 0; i < u.length; i++) {
      trial[i] = u[i] + share * d[i];
    }
    equations.outOfBalance(trial, gTrial);
    double slope = 0;
    for (int i = 0; i < u.length; i++) {
      slope += gTrial[i] * d[i];
    }
    return slope;
  }

  static double largest(double[] u) {
    double largest = 0;
    for (int i = 0; i < u.length; i += 2) {
      double y = Math.abs(u[i]);
      if (!(y <= largest)) {
        largest = y;
      }
    }
    return largest;
  }
}
