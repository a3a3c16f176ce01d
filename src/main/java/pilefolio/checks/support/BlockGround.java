package pilefolio.checks.support;

import pilefolio.analysis.earth.DrainedStrength;
import pilefolio.analysis.earth.SoilLayer;
import pilefolio.checks.RunCheck.MissingInput;
import pilefolio.checks.situation.DesignSituation;
import pilefolio.units.Units;

/**
 * The ground around an anchor block, with the factors of a combination.
 *
 * @param weight unit weight, N/m³
 * @param friction friction angle, rad
 */
record BlockGround(double weight, double friction) {

  /**
   * The ground from its surface to the foot of a block.
   *
   * @param foot level of the foot, m
   * @throws MissingInput if the ground is not drained and dry over that depth
   */
  static BlockGround of(DesignSituation situation, double foot) {
    double top = situation.run().levels().retained().si();
    if (situation.waterBehind() > foot) {
      throw new MissingInput("Blocks below the water table are not covered.");
    }
    return new BlockGround(
        Units.KN_M3.toSi(weighted(situation, top, foot)), friction(situation, top, foot));
  }

  /** Least design friction angle between two levels, rad. */
  static double friction(DesignSituation situation, double top, double bottom) {
    double least = Double.POSITIVE_INFINITY;
    for (SoilLayer layer : situation.designProfile().layers()) {
      if (layer.topLevel() <= bottom + 1e-9 || layer.bottomLevel() >= top - 1e-9) {
        continue;
      }
      if (!(layer.strength() instanceof DrainedStrength drained)) {
        throw new MissingInput("Blocks in undrained ground are not covered.");
      }
      least = Math.min(least, drained.phiRad());
    }
    if (least == Double.POSITIVE_INFINITY) {
      throw new MissingInput("The ground at the block is not known.");
    }
    return least;
  }

  private static double weighted(DesignSituation situation, double top, double foot) {
    double sum = 0;
    for (SoilLayer layer : situation.designProfile().layers()) {
      double from = Math.min(top, layer.topLevel());
      double to = Math.max(foot, layer.bottomLevel());
      sum += Math.max(0, from - to) * layer.gammaAbove();
    }
    return sum / (top - foot);
  }
}
