package pilefolio.analysis.wall;

/**
 * Ultimate resistance of sand to a single pile that is pushed sideways, after Reese, Cox and Koop
 * (1974); to be confirmed by the user. A second opinion on effective widths.
 *
 * @param phiRad angle of friction, rad, more than 0 and less than π/3
 * @param gamma unit weight, buoyant below water, kN/m³
 * @param width width of the pile, m
 * @param atRest coefficient of pressure at rest; 0.4 in the original
 */
public record PileInSand(double phiRad, double gamma, double width, double atRest) {

  /**
   * @throws IllegalArgumentException if a value leaves its range
   */
  public PileInSand {
    if (!(phiRad > 0 && phiRad < Math.PI / 3 && gamma > 0 && width > 0 && atRest > 0)) {
      throw new IllegalArgumentException("sand or pile outside the range of the method");
    }
  }

  /** Resistance of a wedge that is lifted before the pile, kN/m, at a depth, m. */
  public double wedge(double depth) {
    double alpha = phiRad / 2;
    double beta = Math.PI / 4 + phiRad / 2;
    double tan = Math.tan(beta - phiRad);
    double sides =
        atRest * depth * Math.tan(phiRad) * Math.sin(beta) / (tan * Math.cos(alpha))
            + atRest
                * depth
                * Math.tan(beta)
                * (Math.tan(phiRad) * Math.sin(beta) - Math.tan(alpha));
    double base = Math.tan(beta) / tan * (width + depth * Math.tan(beta) * Math.tan(alpha));
    return gamma * depth * (sides + base - active() * width);
  }

  /** Resistance of sand that flows round the pile, kN/m, at a depth, m. */
  public double flowAround(double depth) {
    double t = Math.tan(Math.PI / 4 + phiRad / 2);
    return width
        * gamma
        * depth
        * (active() * (Math.pow(t, 8) - 1) + atRest * Math.tan(phiRad) * Math.pow(t, 4));
  }

  /** The lesser of both, kN/m. */
  public double resistance(double depth) {
    return Math.min(wedge(depth), flowAround(depth));
  }

  private double active() {
    double t = Math.tan(Math.PI / 4 - phiRad / 2);
    return t * t;
  }
}
