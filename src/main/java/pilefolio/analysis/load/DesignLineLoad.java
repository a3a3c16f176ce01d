package pilefolio.analysis.load;

/**
 * A line load parallel to the wall by the adjusted elastic forms in m = x/H and n = z/H: for m up
 * to 0.4 (Q/H)·0.203·n/(0.16 + n²)², beyond (Q/H)·1.28·m²n/(m² + n²)². From memory of NAVFAC
 * DM-7.02 (1986) after Terzaghi (1954). Below z = H the same forms are continued.
 *
 * @param x distance from the wall, m, more than zero
 * @param height height H from the excavation to the level of the load, m, more than zero
 * @param load load, kN per metre, zero or more
 */
public record DesignLineLoad(double x, double height, double load) implements LocalLoad {
  /** The ratio x/H up to which the form for near loads holds. */
  public static final double NEAR = 0.4;

  /**
   * @throws IllegalArgumentException if a value leaves the range stated for it
   */
  public DesignLineLoad {
    LocalLoad.requirePositive(x, "distance of the line load");
    LocalLoad.requirePositive(height, "height below the line load");
    LocalLoad.requireNotNegative(load, "line load");
  }

  @Override
  public double pressure(double depth) {
    if (!(depth > 0)) {
      return 0;
    }
    double m = x / height;
    double n = depth / height;
    if (m <= NEAR) {
      double d = 0.16 + n * n;
      return load / height * 0.203 * n / (d * d);
    }
    double d = m * m + n * n;
    return load / height * 1.28 * m * m * n / (d * d);
  }

  @Override
  public DesignLineLoad times(double factor) {
    return new DesignLineLoad(x, height, load * factor);
  }
}
