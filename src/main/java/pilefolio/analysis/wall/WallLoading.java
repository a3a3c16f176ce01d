package pilefolio.analysis.wall;

import pilefolio.analysis.earth.Mobilisation;
import pilefolio.analysis.earth.PressureFactors;
import pilefolio.analysis.earth.WallGround;
import pilefolio.analysis.earth.WallPressures;
import pilefolio.analysis.earth.WaterFlow;

/** Net pressures on a wall for any toe level, and how deep a search may go. */
public final class WallLoading {
  // Twelve retained heights and ten metres: far beyond any wall that is built.
  private static final double SEARCH_HEIGHTS = 12;
  private static final double SEARCH_EXTRA = 10;

  private final WallPressures pressures;
  private final NetPressure deepActing;
  private final NetPressure deepReversed;

  /** Net pressures in the given ground. */
  public WallLoading(WallGround ground) {
    pressures = new WallPressures(ground);
    deepActing = computeActing(searchBottom());
    deepReversed = computeReversed(searchBottom());
  }

  /** The pressures on each side. */
  public WallPressures pressures() {
    return pressures;
  }

  /** The ground. */
  public WallGround ground() {
    return pressures.ground();
  }

  /** Design excavation level, m. */
  public double excavationLevel() {
    return ground().front().groundLevel();
  }

  /** The lowest toe level that is tried, m. */
  public double searchBottom() {
    WallGround g = ground();
    double limit = g.front().groundLevel() - SEARCH_HEIGHTS * g.retainedHeight() - SEARCH_EXTRA;
    return Math.max(limit, g.profile().bottomLevel());
  }

  /** Active behind less passive in front, from the top to the toe. */
  public NetPressure acting(double toe) {
    return toeMatters() ? computeActing(toe) : deepActing.above(toe);
  }

  /** Passive behind less active in front, from the top to the toe. */
  public NetPressure reversed(double toe) {
    return toeMatters() ? computeReversed(toe) : deepReversed.above(toe);
  }

  /** The same loading with another divisor on passive pressure. */
  public WallLoading withPassiveDivisor(double divisor) {
    PressureFactors f = ground().factors().withPassiveDivisor(divisor);
    return new WallLoading(ground().withFactors(f));
  }

  private boolean toeMatters() {
    return ground().flow() == WaterFlow.LINEAR_SEEPAGE;
  }

  private NetPressure computeActing(double toe) {
    return NetPressure.of(
        pressures.behind(Mobilisation.ACTIVE, toe), pressures.front(Mobilisation.PASSIVE, toe));
  }

  private NetPressure computeReversed(double toe) {
    return NetPressure.of(
        pressures.behind(Mobilisation.PASSIVE, toe), pressures.front(Mobilisation.ACTIVE, toe));
  }
}
