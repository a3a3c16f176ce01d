package pilefolio.analysis.load;

/**
 * A line load parallel to the wall, elastic stress doubled: (4Q/π)·x²z/(x² + z²)².
 *
 * @param x distance from the wall, m, more than zero
 * @param load load, kN per metre, zero or more
 */
public record ElasticLineLoad(double x, double load) implements LocalLoad {

  /**
   * @throws IllegalArgumentException if a value leaves the range stated for it
   */
  public ElasticLineLoad {
    LocalLoad.requirePositive(x, "distance of the line load");
    LocalLoad.requireNotNegative(load, "line load");
  }

  @Override
  public double pressure(double depth) {
    if (!(depth > 0)) {
      return 0;
    }
    double r2 = x * x + depth * depth;
    return 4 * load / Math.PI * x * x * depth / (r2 * r2);
  }

  @Override
  public ElasticLineLoad times(double factor) {
    return new ElasticLineLoad(x, load * factor);
  }
}
