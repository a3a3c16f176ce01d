package pilefolio.analysis.wall;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Wall with several supports: the part below the lowest one, with a hinge there. Moments of the
 * pressures below the support about it give the embedment; the wall's moment at the support is not
 * relied on. The force found in the support is the one that this part brings to it.
 *
 * @param supportLevel level of the lowest support, m
 */
public record LowestSpan(double supportLevel) implements WallMethod {

  @Override
  public double outOfBalance(WallLoading loading, double toeLevel) {
    return -below(loading, toeLevel).momentAbout(supportLevel);
  }

  private NetPressure below(WallLoading loading, double toeLevel) {
    return loading.acting(toeLevel).between(supportLevel, Double.NEGATIVE_INFINITY);
  }

  @Override
  public WallOutcome solve(WallLoading loading) {
    NoEquilibrium misplaced = SupportPlace.offWall(loading, supportLevel);
    if (misplaced != null) {
      return misplaced;
    }
    OptionalDouble toe =
        DepthSearch.firstBalanced(
            loading, loading.excavationLevel(), t -> outOfBalance(loading, t));
    if (toe.isEmpty()) {
      return DepthSearch.why(loading);
    }
    double level = toe.getAsDouble();
    NetPressure net = below(loading, level);
    double support = net.force();
    if (support < 0) {
      return SupportPlace.unloaded(support);
    }
    return new Equilibrium(
        loading.excavationLevel(),
        level,
        1,
        OptionalDouble.empty(),
        OptionalDouble.of(support),
        OptionalDouble.empty(),
        new WallStatics(net, List.of(new PointForce("support", supportLevel, -support))));
  }
}
