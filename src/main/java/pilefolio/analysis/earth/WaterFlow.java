package pilefolio.analysis.earth;

/** How pore pressure varies with depth beside the wall. */
public enum WaterFlow {
  /** Each side hydrostatic from its own level; the toe is cut off from flow. */
  HYDROSTATIC,
  /**
   * Head lost evenly along the wall, round the toe; both sides meet at the toe with u =
   * γ_w·2·d1·d2/ (d1 + d2), where d1 and d2 are the depths of the toe below the two water levels.
   */
  LINEAR_SEEPAGE
}
