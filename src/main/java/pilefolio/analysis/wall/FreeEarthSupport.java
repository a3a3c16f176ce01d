package pilefolio.analysis.wall;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Wall with one support and a toe free to turn: moments about the support give the embedment, the
 * sum of forces gives the support.
 *
 * @param supportLevel level of the support, m
 */
public record FreeEarthSupport(double supportLevel) implements WallMethod {

  @Override
  public double outOfBalance(WallLoading loading, double toeLevel) {
    return -loading.acting(toeLevel).momentAbout(supportLevel);
  }

  @Override
  public WallOutcome solve(WallLoading loading) {
    NoEquilibrium misplaced = SupportPlace.fault(loading, supportLevel);
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
    NetPressure net = loading.acting(level);
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
