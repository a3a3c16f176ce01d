package pilefolio.analysis.load;

/** A load behind the wall that acts on a part of the ground only. */
public sealed interface LocalLoad
    permits StripLoad,
        ElasticLineLoad,
        DesignLineLoad,
        ElasticPointLoad,
        DesignPointLoad,
        AreaLoad {

  /**
   * Horizontal pressure on the wall, kPa.
   *
   * @param depth depth below the level of the load, m; zero above it
   */
  double pressure(double depth);

  /** The same load with its intensity multiplied. */
  LocalLoad times(double factor);

  /** Throws unless a length or load is more than zero. */
  static void requirePositive(double value, String what) {
    if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(what + " must be more than zero, is " + value);
    }
  }

  /** Throws unless a length or load is zero or more. */
  static void requireNotNegative(double value, String what) {
    if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(what + " must be zero or more, is " + value);
    }
  }
}
