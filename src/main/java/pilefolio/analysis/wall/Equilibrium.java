package pilefolio.analysis.wall;

import java.util.OptionalDouble;

/**
 * A wall in equilibrium.
 *
 * @param excavationLevel design excavation level, m
 * @param toeLevel theoretical toe level at which equilibrium holds, m
 * @param embedmentIncrease factor by which the method multiplies the theoretical embedment; 1 if it
 *     does not
 * @param pivotLevel level where pressures reverse, full cantilever only; for the equivalent beam
 *     the level of its hinge
 * @param supportForce force in the support, kN/m, positive when it holds the wall back
 * @param toeForce concentrated force at the toe, kN/m, positive toward the excavation
 * @param statics net pressure, shear and moment down to the theoretical toe
 */
public record Equilibrium(
    double excavationLevel,
    double toeLevel,
    double embedmentIncrease,
    OptionalDouble pivotLevel,
    OptionalDouble supportForce,
    OptionalDouble toeForce,
    WallStatics statics)
    implements WallOutcome {

  /** Theoretical embedment below the design excavation level, m. */
  public double theoreticalEmbedment() {
    return excavationLevel - toeLevel;
  }

  /** Embedment to build, m: theoretical times the increase of the method. */
  public double requiredEmbedment() {
    return theoreticalEmbedment() * embedmentIncrease;
  }

  /** Toe level to build, m. */
  public double requiredToeLevel() {
    return excavationLevel - requiredEmbedment();
  }

  /** Required embedment over the embedment provided by a toe level; above 1 is not enough. */
  public double utilisation(double providedToeLevel) {
    double provided = excavationLevel - providedToeLevel;
    return provided > 0 ? requiredEmbedment() / provided : Double.POSITIVE_INFINITY;
  }
}
