package pilefolio.analysis.load;

/**
 * A point load, elastic stress of ground that keeps its volume, doubled: (3Q/π)·x²z/R⁵ with R² = x²
 * + y² + z².
 *
 * @param x distance from the wall, m, more than zero
 * @param y distance along the wall from the section considered, m
 * @param load load, kN, zero or more
 */
public record ElasticPointLoad(double x, double y, double load) implements LocalLoad {

  /**
   * @throws IllegalArgumentException if a value leaves the range stated for it
   */
  public ElasticPointLoad {
    LocalLoad.requirePositive(x, "distance of the point load");
    LocalLoad.requireNotNegative(Math.abs(y), "offset of the point load");
    LocalLoad.requireNotNegative(load, "point load");
  }

  @Override
  public double pressure(double depth) {
    if (!(depth > 0)) {
      return 0;
    }
    double r2 = x * x + y * y + depth * depth;
    return 3 * load / Math.PI * x * x * depth / (r2 * r2 * Math.sqrt(r2));
  }

  @Override
  public ElasticPointLoad times(double factor) {
    return new ElasticPointLoad(x, y, load * factor);
  }
}
