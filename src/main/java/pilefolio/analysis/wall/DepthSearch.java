package pilefolio.analysis.wall;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import pilefolio.analysis.earth.Coefficients;
import pilefolio.analysis.earth.Mobilisation;
import pilefolio.analysis.earth.SoilLayer;
import pilefolio.analysis.earth.UndrainedStrength;
import pilefolio.analysis.earth.WallGround;

/** Finds the first level below a start at which a wall stops being too short. */
final class DepthSearch {
  private static final int STEPS = 300;
  private static final double LEVEL_ACCURACY = 1e-12;
  private static final int EVALUATIONS = 500;

  private DepthSearch() {}

  /**
   * First toe level from the start down at which the measure falls to zero.
   *
   * @param measure positive while the wall is too short
   */
  static OptionalDouble firstBalanced(
      WallLoading loading, double start, DoubleUnaryOperator measure) {
    double bottom = loading.searchBottom();
    TreeSet<Double> levels = new TreeSet<>();
    for (int i = 1; i <= STEPS; i++) {
      // Steps grow with depth: fine where walls end, coarse where they do not.
      double t = (double) i / STEPS;
      levels.add(start - (start - bottom) * t * t);
    }
    for (SoilLayer layer : loading.ground().profile().layers()) {
      if (layer.topLevel() < start && layer.topLevel() > bottom) {
        levels.add(layer.topLevel());
      }
    }
    double upper = start;
    double atUpper = measure.applyAsDouble(upper);
    if (atUpper <= 0) {
      return OptionalDouble.of(start);
    }
    for (double lower : levels.descendingSet()) {
      double atLower = measure.applyAsDouble(lower);
      if (atLower <= 0) {
        return OptionalDouble.of(root(measure, lower, upper));
      }
      upper = lower;
    }
    return OptionalDouble.empty();
  }

  /** The root of a function with a change of sign between two points. */
  static double root(DoubleUnaryOperator f, double low, double high) {
    double atLow = f.applyAsDouble(low);
    double atHigh = f.applyAsDouble(high);
    if (atLow == 0) {
      return low;
    }
    if (atHigh == 0) {
      return high;
    }
    return new BracketingNthOrderBrentSolver(1e-15, LEVEL_ACCURACY, 1e-13, 5)
        .solve(EVALUATIONS, f::applyAsDouble, low, high);
  }

  /** Why no level was found. */
  static NoEquilibrium why(WallLoading loading) {
    WallGround g = loading.ground();
    double exc = loading.excavationLevel();
    SoilLayer layer = g.profile().below(exc - 1e-9);
    if (layer.strength() instanceof UndrainedStrength
        && loading.acting(loading.searchBottom()).justBelow(exc) >= 0) {
      Coefficients k = loading.pressures().coefficients(layer);
      double su = layer.cohesionAt(exc);
      return new NoEquilibrium(
          NoEquilibrium.Cause.UNDRAINED_GROUND_TOO_WEAK,
          String.format(
              Locale.ROOT,
              "undrained layer %s below the excavation: the difference of vertical stress between"
                  + " the two sides, %.1f kPa, is not less than (K_ac + K_pc)·s_u = %.1f kPa, so no"
                  + " depth gives equilibrium",
              layer.name(),
              stressDifference(loading, exc),
              (k.kAc() + k.kPc() / g.factors().passiveDivisor()) * su));
    }
    if (loading.searchBottom() <= g.profile().bottomLevel()) {
      return new NoEquilibrium(
          NoEquilibrium.Cause.PROFILE_ENDS,
          String.format(
              Locale.ROOT,
              "the ground profile ends at level %.2f m before equilibrium is reached",
              g.profile().bottomLevel()));
    }
    return new NoEquilibrium(
        NoEquilibrium.Cause.RESISTANCE_TOO_SMALL,
        String.format(
            Locale.ROOT,
            "resistance in front does not balance the pressure behind down to level %.1f m",
            loading.searchBottom()));
  }

  private static double stressDifference(WallLoading loading, double exc) {
    double below = exc - 1e-6;
    var behind = loading.pressures().behind(Mobilisation.ACTIVE, below).segments();
    var front = loading.pressures().front(Mobilisation.PASSIVE, below).segments();
    return behind.get(behind.size() - 1).bottom().sigmaV()
        - front.get(front.size() - 1).bottom().sigmaV();
  }
}
