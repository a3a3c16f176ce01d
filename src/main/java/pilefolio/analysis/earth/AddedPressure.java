package pilefolio.analysis.earth;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pilefolio.analysis.load.PressurePolyline;

/** What local loads and an earthquake add to active pressure behind the wall. */
final class AddedPressure {
  // The curve of hydrodynamic pressure is a root, steep at the water surface.
  private static final double[] SUCTION_PLACES = {0.02, 0.08, 0.2, 0.4, 0.7};

  private final WallGround ground;
  private final Map<SoilLayer, Coefficients> behind;
  private final double spread;

  private AddedPressure(WallGround ground, Map<SoilLayer, Coefficients> behind, double spread) {
    this.ground = ground;
    this.behind = behind;
    this.spread = spread;
  }

  static AddedPressure none(WallGround ground) {
    return new AddedPressure(ground, Map.of(), 0);
  }

  /** Adds up the increment of the earthquake above the excavation. */
  static AddedPressure of(
      WallGround ground, List<Stretch> stretches, Map<SoilLayer, Coefficients> behind, double toe) {
    AddedPressure loads = new AddedPressure(ground, behind, 0);
    if (ground.surroundings().earthquake().isEmpty()) {
      return loads;
    }
    double excavation = ground.front().groundLevel();
    double force = 0;
    double reached = ground.behind().groundLevel();
    for (Stretch s : stretches) {
      if (s.upper() > excavation + 1e-9) {
        force += loads.increase(s) * s.effectiveForce();
        reached = s.lower();
      }
    }
    return new AddedPressure(ground, behind, force / (ground.behind().groundLevel() - reached));
  }

  private double increase(Stretch s) {
    Earthquake quake = ground.surroundings().earthquake().orElseThrow();
    return quake.activeIncrease(
        s.layer(),
        behind.get(s.layer()).kA(),
        s.uLower() > 0,
        ground.surroundings().slopeBehindRad(),
        ground.gammaWater());
  }

  /** A segment with what is added to it. */
  PressureSegment to(PressureSegment segment, Stretch stretch) {
    return new PressureSegment(
        node(segment.top(), stretch, true), node(segment.bottom(), stretch, false));
  }

  private PressureNode node(PressureNode n, Stretch stretch, boolean justBelow) {
    Surroundings around = ground.surroundings();
    double permanent = at(around.permanent(), n.level(), justBelow);
    double variable = at(around.variable(), n.level(), justBelow);
    double earthquake = earthquake(n.level(), stretch);
    return permanent == 0 && variable == 0 && earthquake == 0
        ? n
        : n.with(Added.of(permanent, variable, earthquake, ground.factors()));
  }

  private static double at(PressurePolyline line, double level, boolean justBelow) {
    return justBelow ? line.justBelow(level) : line.justAbove(level);
  }

  private double earthquake(double level, Stretch stretch) {
    Optional<Earthquake> quake = ground.surroundings().earthquake();
    if (quake.isEmpty()) {
      return 0;
    }
    double excavation = ground.front().groundLevel();
    double height = ground.behind().groundLevel() - excavation;
    double mid = (stretch.upper() + stretch.lower()) / 2;
    double own =
        mid > excavation
            ? spread
                * (Earthquake.AT_TOP
                    - 2
                        * (Earthquake.AT_TOP - 1)
                        * (ground.behind().groundLevel() - level)
                        / height)
            : increase(stretch) * stretch.effective(level);
    return own + suction(level, mid, quake.get());
  }

  /** Pressure that the free water in front no longer gives; it counts as pressure behind. */
  private double suction(double level, double mid, Earthquake quake) {
    double surface = ground.front().waterLevel();
    double depth = surface - ground.front().groundLevel();
    if (depth <= 0 || mid > surface || mid < ground.front().groundLevel()) {
      return 0;
    }
    return MononobeOkabe.hydrodynamic(quake.kH(), ground.gammaWater(), surface - level, depth);
  }

  /** Levels at which the suction of free water in front is taken. */
  static List<Double> suctionLevels(WallGround ground) {
    double surface = ground.front().waterLevel();
    double depth = surface - ground.front().groundLevel();
    List<Double> levels = new ArrayList<>();
    if (depth > 0) {
      levels.add(surface);
      for (double place : SUCTION_PLACES) {
        levels.add(surface - place * depth);
      }
    }
    return levels;
  }
}
