package pilefolio.analysis.earth;

/**
 * Pore pressure on one side of the wall.
 *
 * @param surfaceLevel level from which pore pressure grows in the ground, m
 * @param surfacePressure pore pressure there, kPa; more than zero under free water
 * @param gradient growth of pore pressure with depth, kPa/m
 */
record PorePressure(double surfaceLevel, double surfacePressure, double gradient) {

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
    return new PorePressure(surface, atSurface, gradient);
  }

  double at(double level) {
    if (level > surfaceLevel) {
      return 0;
    }
    return surfacePressure + gradient * (surfaceLevel - level);
  }
}
