package pilefolio.analysis.earth;

/**
 * Horizontal pressure at one level beside that of the ground's own weight, uniform load and water.
 *
 * @param permanent from permanent local loads, kPa, without factor
 * @param variable from variable local loads, kPa, without factor
 * @param earthquake from the earthquake, kPa; its factor is 1
 * @param factored the three with their factors and the share of the wall on which they act, kPa
 */
public record Added(double permanent, double variable, double earthquake, double factored) {
  /** Nothing. */
  public static final Added NOTHING = new Added(0, 0, 0, 0);

  static Added of(double permanent, double variable, double earthquake, PressureFactors f) {
    return new Added(
        permanent,
        variable,
        earthquake,
        f.onPermanent() * permanent + f.onVariable() * variable + earthquake);
  }

  Added on(double share) {
    return new Added(permanent, variable, earthquake, share * factored);
  }

  /** Part of the way to other values, 0 to 1. */
  public Added toward(Added other, double t) {
    return new Added(
        permanent + t * (other.permanent - permanent),
        variable + t * (other.variable - variable),
        earthquake + t * (other.earthquake - earthquake),
        factored + t * (other.factored - factored));
  }
}
