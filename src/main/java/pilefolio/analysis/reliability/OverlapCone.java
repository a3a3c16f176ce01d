package pilefolio.analysis.reliability;

/**
 * Overlap of two neighbours with depth when each may deviate by a plan tolerance and lean by a
 * verticality tolerance: the tolerance cone of a joint.
 *
 * @param nominalOverlap overlap as set out, mm
 * @param positionTolerance tolerance of one pile at the guide wall, mm, zero or more
 * @param verticality the n of 1 in n, above zero
 */
public record OverlapCone(double nominalOverlap, double positionTolerance, double verticality) {

  /** Which combination of the two piles' deviations is meant. */
  public enum Case {
    /** Both piles at the edge of tolerance, leaning apart. */
    BOTH_APART,
    /** Independent deviations added by root-sum-square. */
    ROOT_SUM_SQUARE,
    /** One pile perfect, the other at the edge of tolerance. */
    ONE_PERFECT
  }

  /**
   * Checks the tolerances.
   *
   * @throws IllegalArgumentException if a tolerance has no meaning
   */
  public OverlapCone {
    if (!(positionTolerance >= 0) || !(verticality > 0) || !Double.isFinite(nominalOverlap)) {
      throw new IllegalArgumentException(
          "position tolerance must be zero or more and 1 in n above zero");
    }
  }

  /**
   * Greatest deviation of one pile.
   *
   * @param depth depth below the guide wall, m
   * @return the deviation, mm
   */
  public double deviation(double depth) {
    return positionTolerance + 1000 * depth / verticality;
  }

  /**
   * Overlap left at a depth.
   *
   * @param which the combination of deviations
   * @param depth depth below the guide wall, m
   * @return the overlap, mm; negative is a gap
   */
  public double overlapAt(Case which, double depth) {
    return switch (which) {
      case BOTH_APART -> nominalOverlap - 2 * deviation(depth);
      case ROOT_SUM_SQUARE ->
          nominalOverlap - Math.sqrt(2) * Math.hypot(positionTolerance, 1000 * depth / verticality);
      case ONE_PERFECT -> nominalOverlap - deviation(depth);
    };
  }

  /**
   * Depth down to which a required overlap is kept.
   *
   * @param which the combination of deviations
   * @param required overlap to keep, mm; zero asks where contact is lost
   * @return the depth, m; zero if the requirement is already missed at the guide wall
   */
  public double depthWith(Case which, double required) {
    double spare = nominalOverlap - required;
    return switch (which) {
      case BOTH_APART -> Math.max(0, verticality * (spare / 2 - positionTolerance) / 1000);
      case ROOT_SUM_SQUARE -> {
        double square = spare * spare / 2 - positionTolerance * positionTolerance;
        yield spare <= 0 || square <= 0 ? 0 : verticality * Math.sqrt(square) / 1000;
      }
      case ONE_PERFECT -> Math.max(0, verticality * (spare - positionTolerance) / 1000);
    };
  }
}
