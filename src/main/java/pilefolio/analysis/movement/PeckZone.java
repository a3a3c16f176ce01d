package pilefolio.analysis.movement;

/**
 * Zones of settlement beside excavations by kind of ground. After Peck (1969). Settlement at the
 * wall and reach are bounds of the zone.
 */
public enum PeckZone {
  /** Sand, and soft to stiff clay, with average workmanship. */
  I(0, 0.01, 2),
  /** Very soft to soft clay, of limited depth below the base or with a margin against heave. */
  II(0.01, 0.02, 4),
  /** Very soft to soft clay to great depth, base near heave. Without an upper bound. */
  III(0.02, Double.POSITIVE_INFINITY, Double.NaN);

  private final double least;
  private final double greatest;
  private final double reach;

  PeckZone(double least, double greatest, double reach) {
    this.least = least;
    this.greatest = greatest;
    this.reach = reach;
  }

  /** Least settlement at the wall over the retained height. */
  public double least() {
    return least;
  }

  /** Greatest settlement at the wall over the retained height; infinite in zone III. */
  public double greatest() {
    return greatest;
  }

  /** Distance at which settlement ends, in retained heights; not a number in zone III. */
  public double reach() {
    return reach;
  }

  /** The zone of a settlement at the wall over the retained height. */
  public static PeckZone of(double ratio) {
    if (!(ratio >= 0)) {
      throw new IllegalArgumentException("a settlement is zero or more");
    }
    return ratio <= I.greatest ? I : ratio <= II.greatest ? II : III;
  }
}
