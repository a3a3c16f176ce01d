package pilefolio.analysis.staged;

/**
 * Equilibrium of the whole wall in a stage, added up from the pressures.
 *
 * @param force sum of all horizontal forces, kN/m
 * @param moment sum of all moments about the toe, kNm/m
 * @param appliedForce sum of what pushes the wall from behind and of the loads on it, kN/m
 * @param appliedMoment moment of the same about the toe, kNm/m
 * @param toeForce horizontal force at a held toe, kN/m, positive toward the excavation
 * @param toeMoment moment at a held toe, kNm/m
 */
public record Balance(
    double force,
    double moment,
    double appliedForce,
    double appliedMoment,
    double toeForce,
    double toeMoment) {

  /** Out-of-balance force over applied force. */
  public double forceRatio() {
    return Math.abs(force) / appliedForce;
  }

  /** Out-of-balance moment over applied moment. */
  public double momentRatio() {
    return Math.abs(moment) / appliedMoment;
  }
}
