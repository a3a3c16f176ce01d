package pilefolio.analysis.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/**
 * Cantilever in full: active behind and passive in front above a pivot, reversed below it; pivot
 * and toe follow from horizontal and moment equilibrium.
 *
 * @param change how net pressure passes from one pair to the other
 */
public record FourForceCantilever(Change change) implements WallMethod {

  /** How net pressure passes from the pair above the pivot to the reversed pair. */
  public enum Change {
    /** All at once at the pivot: four earth forces. */
    ABRUPT,
    /** Along a straight line from the pivot to the full reversed pressure at the toe. */
    STRAIGHT_LINE
  }

  @Override
  public double outOfBalance(WallLoading loading, double toeLevel) {
    return net(loading, toeLevel).momentAbout(toeLevel);
  }

  @Override
  public WallOutcome solve(WallLoading loading) {
    OptionalDouble toe =
        DepthSearch.firstBalanced(
            loading, loading.excavationLevel(), t -> outOfBalance(loading, t));
    if (toe.isEmpty()) {
      return DepthSearch.why(loading);
    }
    double level = toe.getAsDouble();
    return new Equilibrium(
        loading.excavationLevel(),
        level,
        1,
        OptionalDouble.of(pivot(loading, level)),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        new WallStatics(net(loading, level), List.of()));
  }

  private NetPressure net(WallLoading loading, double toe) {
    NetPressure acting = loading.acting(toe);
    double pivot = pivot(loading, toe);
    if (pivot - toe < 1e-12) {
      return acting;
    }
    NetPressure upper = acting.above(pivot);
    if (change == Change.ABRUPT) {
      return upper.followedBy(loading.reversed(toe).between(pivot, toe));
    }
    double atToe = loading.reversed(toe).justAbove(toe);
    // Where pressure jumps at a layer boundary the line may start inside the jump; this start value
    // closes horizontal equilibrium and equals the pressure at the pivot wherever there is no jump.
    double start = -2 * upper.force() / (pivot - toe) - atToe;
    List<NetSegment> line = new ArrayList<>();
    line.add(new NetSegment(pivot, toe, start, atToe));
    return upper.followedBy(new NetPressure(line));
  }

  /** The pivot that closes horizontal equilibrium for a toe; the toe itself if none can. */
  private double pivot(WallLoading loading, double toe) {
    NetPressure acting = loading.acting(toe);
    if (acting.force() >= 0) {
      return toe;
    }
    NetPressure reversed = loading.reversed(toe);
    double atToe = reversed.justAbove(toe);
    double top = loading.excavationLevel();
    DoubleUnaryOperator sum =
        p ->
            change == Change.ABRUPT
                ? acting.above(p).force() + reversed.between(p, toe).force()
                : acting.above(p).force() + (acting.justAbove(p) + atToe) / 2 * (p - toe);
    if (sum.applyAsDouble(top) <= 0) {
      return top;
    }
    return DepthSearch.root(sum, toe, top);
  }
}
