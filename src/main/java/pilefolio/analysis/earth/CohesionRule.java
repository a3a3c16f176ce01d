package pilefolio.analysis.earth;

/**
 * What becomes of the tension that cohesion would put into active pressure, and the least pressure
 * of ground with cohesion.
 *
 * @param tension the rule for tension
 * @param minimumFluidWeight least total lateral pressure of a layer with cohesion as an equivalent
 *     fluid, kPa per m depth below the ground surface; zero for none
 */
public record CohesionRule(Tension tension, double minimumFluidWeight) {

  /** How tension is treated. */
  public enum Tension {
    /** Tension is left out: a dry crack. */
    DRY_CRACK,
    /** The crack stands full of water up to the ground surface. */
    WATER_FILLED_CRACK,
    /** Tension is kept; only for comparison with closed forms that do so. */
    KEPT
  }

  /** A dry crack and no minimum pressure. */
  public static final CohesionRule DRY = new CohesionRule(Tension.DRY_CRACK, 0);

  public CohesionRule {
    if (!(minimumFluidWeight >= 0)) {
      throw new OutsideRange("the minimum equivalent fluid weight must be zero or more");
    }
  }
}
