package pilefolio.analysis.stability;

/**
 * A vertical slice of sliding ground.
 *
 * @param layer layer at the base
 * @param from left side, m
 * @param to right side, m
 * @param top mean level of its top, m
 * @param base level of its base midway along the arc, m
 * @param alphaRad slope of the base midway along the arc, rad, positive where it drives the slide
 * @param weight weight of the ground, kN/m
 * @param load load on top, kN/m
 * @param pore pore pressure at the base, kPa; zero in undrained ground, which is in total stress
 * @param cohesion c' or s_u at the base, kPa
 * @param phiRad φ' at the base, rad; zero in undrained ground
 */
public record SlipSlice(
    String layer,
    double from,
    double to,
    double top,
    double base,
    double alphaRad,
    double weight,
    double load,
    double pore,
    double cohesion,
    double phiRad) {

  /** Width, m. */
  public double width() {
    return to - from;
  }

  /** Weight and load, kN/m. */
  public double vertical() {
    return weight + load;
  }

  /** Driving force along the base, kN/m. */
  public double driving() {
    return vertical() * Math.sin(alphaRad);
  }

  /** Strength along the base before division by m_α, kN/m; friction is not taken below zero. */
  public double resistance() {
    return cohesion * width() + Math.max(0, vertical() - pore * width()) * Math.tan(phiRad);
  }
}
