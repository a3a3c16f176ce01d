package pilefolio.analysis.stability;

import java.util.List;

/**
 * Water in a section with a wall at x = 0.
 *
 * <p>Behind the wall pore pressure is hydrostatic from the level there, also under the toe; in
 * front the head grows evenly from the ground surface to the toe and stays the same below it. With
 * seepage both are on the safe side: water loses head on its way down and gains none away from the
 * wall.
 *
 * @param levelFront water level in front, m; negative infinity if there is none
 * @param levelBehind water level behind, m; negative infinity if there is none
 * @param groundFront ground level in front, m
 * @param toe level of the toe, m, below the ground in front
 * @param headAtToe head at the toe in front, m; {@code levelFront} without seepage
 * @param gammaWater unit weight of water, kN/m³
 * @param confined stretches with a piezometric level of their own; in front the higher pressure
 *     counts there
 */
public record SlipWater(
    double levelFront,
    double levelBehind,
    double groundFront,
    double toe,
    double headAtToe,
    double gammaWater,
    List<Confined> confined) {

  /**
   * A stretch of the ground with its own piezometric level.
   *
   * @param top level of its top, m
   * @param bottom level of its bottom, m
   * @param piezometric level to which its water rises, m
   */
  public record Confined(double top, double bottom, double piezometric) {}

  public SlipWater {
    confined = List.copyOf(confined);
  }

  private static final double NONE = Double.NEGATIVE_INFINITY;

  /** No water. */
  public static SlipWater none() {
    return new SlipWater(NONE, NONE, 0, -1, NONE, 1, List.of());
  }

  /** Water at rest at one level on each side. */
  public static SlipWater atRest(double levelFront, double levelBehind, double gammaWater) {
    return new SlipWater(levelFront, levelBehind, 0, -1, levelFront, gammaWater, List.of());
  }

  /** Water level at a distance, m; above the ground it is free water. */
  public double level(double x) {
    return x < 0 ? levelFront : levelBehind;
  }

  /** Pore pressure at a point in the ground, kPa; zero above the water. */
  public double pressure(double x, double level) {
    for (Confined stretch : confined) {
      if (level < stretch.top() && level >= stretch.bottom()) {
        double own = Math.max(0, gammaWater * (stretch.piezometric() - level));
        return x >= 0 ? own : Math.max(own, byLevel(x, level));
      }
    }
    return byLevel(x, level);
  }

  private double byLevel(double x, double level) {
    double surface = level(x);
    if (!(level < surface)) {
      return 0;
    }
    if (x >= 0) {
      return gammaWater * (levelBehind - level);
    }
    double share = Math.max(0, Math.min(1, (groundFront - level) / (groundFront - toe)));
    double head = levelFront + (headAtToe - levelFront) * share;
    return gammaWater * (head - level);
  }
}
