package pilefolio.analysis.staged;

/**
 * What a layer adds to its limits of pressure.
 *
 * @param atRest coefficient of earth pressure at rest, on effective vertical stress, more than zero
 * @param modulus modulus of subgrade reaction of one side of the wall, kN/m³, zero or more
 */
public record LayerSprings(double atRest, double modulus) {

  /**
   * @throws IllegalArgumentException if a value leaves its range
   */
  public LayerSprings {
    if (!(atRest > 0 && modulus >= 0)) {
      throw new IllegalArgumentException(
          "a layer needs an at-rest coefficient and a modulus of subgrade reaction");
    }
  }
}
