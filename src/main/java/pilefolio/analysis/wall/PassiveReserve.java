package pilefolio.analysis.wall;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/** The divisor on passive pressure at which a wall with a given toe is just in equilibrium. */
public final class PassiveReserve {
  private static final double LEAST = 0.05;
  private static final double GREATEST = 100;

  private PassiveReserve() {}

  /**
   * Factor of safety on passive pressure at a toe level, no increase of embedment.
   *
   * @return the divisor; positive infinity if the wall needs no passive pressure; empty if no
   *     divisor gives equilibrium
   */
  public static OptionalDouble at(WallLoading loading, WallMethod method, double toeLevel) {
    DoubleUnaryOperator f =
        logF -> method.outOfBalance(loading.withPassiveDivisor(Math.exp(logF)), toeLevel);
    double low = Math.log(LEAST);
    double high = Math.log(GREATEST);
    if (f.applyAsDouble(low) > 0) {
      return OptionalDouble.empty();
    }
    if (f.applyAsDouble(high) <= 0) {
      return OptionalDouble.of(Double.POSITIVE_INFINITY);
    }
    return OptionalDouble.of(Math.exp(DepthSearch.root(f, low, high)));
  }
}
