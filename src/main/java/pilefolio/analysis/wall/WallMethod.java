package pilefolio.analysis.wall;

/** A way to find the embedment of a wall. */
public sealed interface WallMethod
    permits SimplifiedCantilever,
        FourForceCantilever,
        FreeEarthSupport,
        FixedEarthSupport,
        EquivalentBeam,
        LowestSpan {

  /** The shallowest embedment in equilibrium, or the reason why there is none. */
  WallOutcome solve(WallLoading loading);

  /**
   * Out-of-balance moment (for the fixed-earth methods a measure with the same sign) at a
   * theoretical toe level: positive while the wall is too short.
   */
  double outOfBalance(WallLoading loading, double toeLevel);
}
