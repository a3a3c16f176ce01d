package pilefolio.analysis.earth;

/**
 * Every value that leads to the pressure at one level on one side, so that a table can print them.
 *
 * <p>Active: {@code earthUnlimited} = K·σ'_v − K_c·c. Passive: K·σ'_v + K_c·c. The pressure on the
 * wall is {@code earthFactor·earth + waterFactor·u} and what is added to it. In an undrained layer
 * u is zero and σ'_v is the total stress.
 *
 * @param level level, m
 * @param depth depth below the ground surface of this side, m
 * @param layer name of the layer; "water" for free water above the ground
 * @param sigmaV total vertical stress, kPa, with surcharge
 * @param u pore pressure that acts on the wall, kPa
 * @param sigmaVEffective vertical stress that the coefficient multiplies, kPa
 * @param k coefficient on vertical stress
 * @param kc coefficient on cohesion
 * @param cohesion c' or s_u, kPa
 * @param earthUnlimited earth pressure before any limit, kPa
 * @param earth earth pressure after limits and after the divisor on passive pressure, kPa
 * @param limit which limit governs
 * @param earthFactor factor on the earth pressure, with the share of the wall on which it acts
 * @param waterFactor factor on the water pressure, likewise
 * @param added pressure from local loads and earthquake
 */
public record PressureNode(
    double level,
    double depth,
    String layer,
    double sigmaV,
    double u,
    double sigmaVEffective,
    double k,
    double kc,
    double cohesion,
    double earthUnlimited,
    double earth,
    Limit limit,
    double earthFactor,
    double waterFactor,
    Added added) {

  /** Which expression gives the earth pressure. */
  public enum Limit {
    /** The coefficients. */
    NONE,
    /** Tension is left out. */
    ZERO,
    /** Water in a crack. */
    CRACK_WATER,
    /** The minimum equivalent fluid. */
    MINIMUM
  }

  /** The same values acting on shares of the length of wall. */
  PressureNode on(double earthShare, double waterShare) {
    return new PressureNode(
        level,
        depth,
        layer,
        sigmaV,
        u,
        sigmaVEffective,
        k,
        kc,
        cohesion,
        earthUnlimited,
        earth,
        limit,
        earthShare * earthFactor,
        waterShare * waterFactor,
        added.on(earthShare));
  }

  /** The same values with pressure added. */
  PressureNode with(Added other) {
    return new PressureNode(
        level,
        depth,
        layer,
        sigmaV,
        u,
        sigmaVEffective,
        k,
        kc,
        cohesion,
        earthUnlimited,
        earth,
        limit,
        earthFactor,
        waterFactor,
        other);
  }

  /** Pressure on the wall, kPa, factored; below the excavation the mean over the length of wall. */
  public double pressure() {
    return earthFactor * earth + waterFactor * u + added.factored();
  }
}
