package pilefolio.analysis.wall;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Wall with one unyielding support and a toe held in direction: at the toe point moment, rotation
 * and deflection are zero and a concentrated force acts (after Blum, without his shortcuts).
 * Stiffness is constant along the wall and cancels.
 *
 * @param supportLevel level of the support, m
 * @param embedmentIncrease factor on the embedment to the toe point, 1 or more; 1.2 is usual, to
 *     make up for the concentrated force
 */
public record FixedEarthSupport(double supportLevel, double embedmentIncrease)
    implements WallMethod {

  public FixedEarthSupport {
    if (!(embedmentIncrease >= 1)) {
      throw new IllegalArgumentException("embedment increase must be 1 or more");
    }
  }

  @Override
  public double outOfBalance(WallLoading loading, double toeLevel) {
    return -statics(loading, toeLevel).offsetFromToeTangent(supportLevel);
  }

  @Override
  public WallOutcome solve(WallLoading loading) {
    WallOutcome free = new FreeEarthSupport(supportLevel).solve(loading);
    if (!(free instanceof Equilibrium shallow)) {
      return free;
    }
    OptionalDouble toe =
        DepthSearch.firstBalanced(loading, shallow.toeLevel(), t -> outOfBalance(loading, t));
    if (toe.isEmpty()) {
      return DepthSearch.why(loading);
    }
    double level = toe.getAsDouble();
    WallStatics statics = statics(loading, level);
    double support = -statics.forces().get(0).force();
    if (support < 0) {
      return SupportPlace.unloaded(support);
    }
    return new Equilibrium(
        loading.excavationLevel(),
        level,
        embedmentIncrease,
        OptionalDouble.empty(),
        OptionalDouble.of(support),
        OptionalDouble.of(statics.forces().get(1).force()),
        statics);
  }

  private WallStatics statics(WallLoading loading, double toe) {
    NetPressure net = loading.acting(toe);
    double support = net.momentAbout(toe) / (supportLevel - toe);
    return new WallStatics(
        net,
        List.of(
            new PointForce("support", supportLevel, -support),
            new PointForce("force at the toe", toe, support - net.force())));
  }
}
