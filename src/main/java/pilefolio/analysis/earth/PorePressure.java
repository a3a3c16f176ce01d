package pilefolio.analysis.earth;

import java.util.Optional;
import java.util.OptionalDouble;
import pilefolio.analysis.load.PressurePolyline;

/**
 * Pore pressure on one side of the wall.
 *
 * @param waterLevel water level of the side, m
 * @param excavation level of the excavation if the side is the front
 * @param gammaWater unit weight of water, kN/m³
 * @param field pore pressures in place of those of the water level
 * @param behindSide whether the side is the one behind
 * @param surfaceLevel level from which pore pressure grows in the ground, m
 * @param surfacePressure pore pressure there, kPa; more than zero under free water
 * @param gradient growth of pore pressure with depth, kPa/m
 */
record PorePressure(
    double waterLevel,
    OptionalDouble excavation,
    double gammaWater,
    Optional<WaterField> field,
    boolean behindSide,
    double surfaceLevel,
    double surfacePressure,
    double gradient) {

  static PorePressure of(WallGround g, boolean behindSide, double toe) {
    Side side = behindSide ? g.behind() : g.front();
    double surface = Math.min(side.waterLevel(), side.groundLevel());
    double atSurface = g.gammaWater() * (side.waterLevel() - surface);
    double gradient = g.gammaWater();
    if (g.flow() == WaterFlow.LINEAR_SEEPAGE) {
      double pathBehind = Math.min(g.behind().waterLevel(), g.behind().groundLevel()) - toe;
      double pathFront = Math.min(g.front().waterLevel(), g.front().groundLevel()) - toe;
      // Flow round the toe needs water above it on both sides.
      if (pathBehind > 0 && pathFront > 0) {
        double lossPerMetre =
            (g.behind().waterLevel() - g.front().waterLevel()) / (pathBehind + pathFront);
        double headAtToe = g.behind().waterLevel() - lossPerMetre * pathBehind;
        double atToe = g.gammaWater() * (headAtToe - toe);
        gradient = (atToe - atSurface) / (surface - toe);
      }
    }
    return new PorePressure(
        side.waterLevel(),
        behindSide ? OptionalDouble.empty() : OptionalDouble.of(side.groundLevel()),
        g.gammaWater(),
        g.surroundings().water(),
        behindSide,
        surface,
        atSurface,
        gradient);
  }

  /** Whether ground of a layer is under water at a level. */
  boolean wet(SoilLayer layer, double level) {
    return level < ownLevel(layer).orElse(waterLevel);
  }

  /** Pore pressure just below a level, kPa. */
  double below(SoilLayer layer, double level) {
    return at(layer, level, true);
  }

  /** Pore pressure just above a level, kPa. */
  double above(SoilLayer layer, double level) {
    return at(layer, level, false);
  }

  private Optional<Double> ownLevel(SoilLayer layer) {
    return field.flatMap(f -> f.ownLevel(layer, excavation));
  }

  private double at(SoilLayer layer, double level, boolean justBelow) {
    Optional<Double> own = ownLevel(layer);
    if (own.isPresent()) {
      return Math.max(0, gammaWater * (own.get() - level));
    }
    if (field.isPresent() && !field.get().face(behindSide).points().isEmpty()) {
      PressurePolyline face = field.get().face(behindSide);
      return Math.max(0, justBelow ? face.justBelow(level) : face.justAbove(level));
    }
    if (level > surfaceLevel) {
      return 0;
    }
    return surfacePressure + gradient * (surfaceLevel - level);
  }
}
