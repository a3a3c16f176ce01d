package pilefolio.analysis.load;

/**
 * A point load by the adjusted elastic forms in m = x/H and n = z/H: for m up to 0.4
 * (Q/H²)·0.28·n²/(0.16 + n²)³, beyond (Q/H²)·1.77·m²n²/(m² + n²)³; beside the load times cos²(1.1θ)
 * with tan θ = y/x. From memory of NAVFAC DM-7.02 (1986) after Terzaghi (1954). Below z = H the
 * same forms are continued; for θ beyond 90°/1.1 nothing is left.
 *
 * @param x distance from the wall, m, more than zero
 * @param y distance along the wall from the section considered, m
 * @param height height H from the excavation to the level of the load, m, more than zero
 * @param load load, kN, zero or more
 */
public record DesignPointLoad(double x, double y, double height, double load) implements LocalLoad {

  /**
   * @throws IllegalArgumentException if a value leaves the range stated for it
   */
  public DesignPointLoad {
    LocalLoad.requirePositive(x, "distance of the point load");
    LocalLoad.requireNotNegative(Math.abs(y), "offset of the point load");
    LocalLoad.requirePositive(height, "height below the point load");
    LocalLoad.requireNotNegative(load, "point load");
  }

  @Override
  public double pressure(double depth) {
    if (!(depth > 0)) {
      return 0;
    }
    double m = x / height;
    double n = depth / height;
    double opposite;
    if (m <= DesignLineLoad.NEAR) {
      opposite = 0.28 * n * n / Math.pow(0.16 + n * n, 3);
    } else {
      opposite = 1.77 * m * m * n * n / Math.pow(m * m + n * n, 3);
    }
    return load / (height * height) * opposite * beside();
  }

  /** Share of the pressure opposite the load that acts beside it. */
  public double beside() {
    double angle = 1.1 * Math.atan(Math.abs(y) / x);
    if (angle >= Math.PI / 2) {
      return 0;
    }
    double c = Math.cos(angle);
    return c * c;
  }

  @Override
  public DesignPointLoad times(double factor) {
    return new DesignPointLoad(x, y, height, load * factor);
  }
}
