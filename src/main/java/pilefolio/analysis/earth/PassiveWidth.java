package pilefolio.analysis.earth;

/** How wide the ground in front of a single pile is that resists it. */
public enum PassiveWidth {
  /** Three widths of the pile. After AASHTO LRFD 3.11.5.6; to be confirmed by the user. */
  THREE_WIDTHS,
  /**
   * Width of the pile times an arching factor: 0.08·φ with φ in degrees, at most 3, in drained
   * ground; 1 in undrained ground, the low end of what is in use. After the Caltrans Trenching and
   * Shoring Manual; to be confirmed by the user.
   */
  ARCHING,
  /** The width of the pile itself. */
  OWN_WIDTH;

  /** Most that arching may widen a pile. */
  public static final double MOST = 3;

  /** Arching factor per degree of friction. */
  public static final double PER_DEGREE = 0.08;

  /**
   * Width over the width of the pile in a layer, 1 to 3; the spacing is not looked at.
   *
   * @param strength strength of the layer; its angle decides
   */
  public double factor(Strength strength) {
    return switch (this) {
      case THREE_WIDTHS -> MOST;
      case OWN_WIDTH -> 1;
      case ARCHING ->
          strength instanceof DrainedStrength d
              ? Math.max(1, Math.min(MOST, PER_DEGREE * Math.toDegrees(d.phiRad())))
              : 1;
    };
  }
}
