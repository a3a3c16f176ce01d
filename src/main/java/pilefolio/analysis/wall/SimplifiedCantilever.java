package pilefolio.analysis.wall;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Cantilever with the pressures below the pivot replaced by one force at the toe: moments about the
 * toe give the theoretical embedment, which is then increased.
 *
 * @param embedmentIncrease factor on the theoretical embedment, 1 or more; 1.2 is usual
 */
public record SimplifiedCantilever(double embedmentIncrease) implements WallMethod {

  public SimplifiedCantilever {
    if (!(embedmentIncrease >= 1)) {
      throw new IllegalArgumentException("embedment increase must be 1 or more");
    }
  }

  @Override
  public double outOfBalance(WallLoading loading, double toeLevel) {
    return loading.acting(toeLevel).momentAbout(toeLevel);
  }

  @Override
  public WallOutcome solve(WallLoading loading) {
    OptionalDouble toe =
        DepthSearch.firstBalanced(
            loading, loading.excavationLevel(), t -> outOfBalance(loading, t));
    if (toe.isEmpty()) {
      return DepthSearch.why(loading);
    }
    NetPressure net = loading.acting(toe.getAsDouble());
    double toeForce = -net.force();
    return new Equilibrium(
        loading.excavationLevel(),
        toe.getAsDouble(),
        embedmentIncrease,
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.of(toeForce),
        new WallStatics(
            net, List.of(new PointForce("force at the toe", toe.getAsDouble(), toeForce))));
  }
}
