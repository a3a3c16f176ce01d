package pilefolio.analysis.wall;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Fixed earth with one support by the equivalent beam: a hinge where net pressure first falls to
 * zero below the excavation.
 *
 * @param supportLevel level of the support, m
 * @param embedmentIncrease factor on the theoretical embedment, 1 or more; 1.2 is usual
 */
public record EquivalentBeam(double supportLevel, double embedmentIncrease) implements WallMethod {

  public EquivalentBeam {
    if (!(embedmentIncrease >= 1)) {
      throw new IllegalArgumentException("embedment increase must be 1 or more");
    }
  }

  @Override
  public double outOfBalance(WallLoading loading, double toeLevel) {
    OptionalDouble hinge = hinge(loading, toeLevel);
    if (hinge.isEmpty()) {
      return 1e9;
    }
    double y = hinge.getAsDouble();
    NetPressure net = loading.acting(toeLevel);
    double atHinge = net.above(y).force() - support(net, y);
    return atHinge * (y - toeLevel) + net.between(y, toeLevel).momentAbout(toeLevel);
  }

  @Override
  public WallOutcome solve(WallLoading loading) {
    NoEquilibrium misplaced = SupportPlace.fault(loading, supportLevel);
    if (misplaced != null) {
      return misplaced;
    }
    OptionalDouble hinge = hinge(loading, loading.searchBottom());
    if (hinge.isEmpty()) {
      return DepthSearch.why(loading);
    }
    OptionalDouble toe =
        DepthSearch.firstBalanced(
            loading,
            // Just below the hinge: at the hinge itself the moment is zero without meaning.
            hinge.getAsDouble() - 1e-6,
            t -> outOfBalance(loading, t));
    if (toe.isEmpty()) {
      return DepthSearch.why(loading);
    }
    double level = toe.getAsDouble();
    NetPressure net = loading.acting(level);
    OptionalDouble y = hinge(loading, level);
    double support = support(net, y.orElseThrow());
    if (support < 0) {
      return SupportPlace.unloaded(support);
    }
    double toeForce = support - net.force();
    return new Equilibrium(
        loading.excavationLevel(),
        level,
        embedmentIncrease,
        y,
        OptionalDouble.of(support),
        OptionalDouble.of(toeForce),
        new WallStatics(
            net,
            List.of(
                new PointForce("support", supportLevel, -support),
                new PointForce("force at the toe", level, toeForce))));
  }

  private double support(NetPressure net, double hinge) {
    return net.above(hinge).momentAbout(hinge) / (supportLevel - hinge);
  }

  private static OptionalDouble hinge(WallLoading loading, double toe) {
    for (NetSegment s : loading.acting(toe).segments()) {
      if (s.topLevel() > loading.excavationLevel() + 1e-9) {
        continue;
      }
      if (s.topPressure() <= 0) {
        return OptionalDouble.of(s.topLevel());
      }
      if (s.bottomPressure() < 0) {
        double t = s.topPressure() / (s.topPressure() - s.bottomPressure());
        return OptionalDouble.of(s.topLevel() - t * s.height());
      }
    }
    return OptionalDouble.empty();
  }
}
