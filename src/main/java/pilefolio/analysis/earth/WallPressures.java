package pilefolio.analysis.earth;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Pressure diagrams on both sides of a wall, in either state, down to a given toe.
 *
 * <p>Above the pivot of a cantilever, and over the whole of a supported wall, the ground behind is
 * active and the ground in front passive; below the pivot the pair is reversed.
 */
public final class WallPressures {
  private final WallGround ground;
  private final Map<SoilLayer, Coefficients> coefficients = new HashMap<>();

  /**
   * @throws OutsideRange if the method cannot give coefficients for a layer
   */
  public WallPressures(WallGround ground) {
    this.ground = ground;
    for (SoilLayer layer : ground.profile().layers()) {
      coefficients.put(layer, ground.method().of(layer.strength()));
    }
  }

  /** The ground these pressures come from. */
  public WallGround ground() {
    return ground;
  }

  /** Coefficients used in a layer of the profile. */
  public Coefficients coefficients(SoilLayer layer) {
    return coefficients.get(layer);
  }

  /** Pressure behind the wall from its top down to the toe level. */
  public PressureDiagram behind(Mobilisation state, double toe) {
    return diagram(true, state, toe);
  }

  /** Pressure in front of the wall from the excavation (or free water) down to the toe level. */
  public PressureDiagram front(Mobilisation state, double toe) {
    return diagram(false, state, toe);
  }

  private PressureDiagram diagram(boolean behindSide, Mobilisation state, double toe) {
    Side side = behindSide ? ground.behind() : ground.front();
    CohesionRule rule = behindSide ? ground.ruleBehind() : ground.ruleFront();
    PorePressure pore = PorePressure.of(ground, behindSide, toe);
    PressureFactors f = ground.factors();
    List<PressureSegment> out = new ArrayList<>();

    if (side.waterLevel() > side.groundLevel()) {
      double bottom = Math.max(side.groundLevel(), toe);
      out.add(new PressureSegment(freeWater(side, side.waterLevel()), freeWater(side, bottom)));
    }
    double freeWaterDepth = Math.max(0, side.waterLevel() - side.groundLevel());
    double sigma =
        side.permanentSurcharge()
            + ground.gammaWater() * freeWaterDepth
            + (state == Mobilisation.ACTIVE
                ? side.variableSurcharge() * f.onVariable() / f.onPermanent()
                : 0);

    TreeSet<Double> levels = new TreeSet<>();
    levels.add(toe);
    addInside(levels, side.waterLevel(), side.groundLevel(), toe);
    for (SoilLayer layer : ground.profile().layers()) {
      addInside(levels, layer.topLevel(), side.groundLevel(), toe);
    }
    ActingWidth width = f.width();
    double excavation = ground.front().groundLevel();
    if (!width.whole()) {
      addInside(levels, excavation, side.groundLevel(), toe);
      addInside(levels, excavation - width.neglected(), side.groundLevel(), toe);
    }
    double upper = side.groundLevel();
    for (double lower : levels.descendingSet()) {
      if (lower >= upper) {
        continue;
      }
      double mid = (upper + lower) / 2;
      SoilLayer layer = ground.profile().below(mid);
      boolean wet = mid < side.waterLevel();
      double sigmaLower = sigma + (wet ? layer.gammaBelow() : layer.gammaAbove()) * (upper - lower);
      Stretch stretch =
          new Stretch(
              side,
              rule,
              state,
              layer,
              coefficients.get(layer),
              f,
              ground.gammaWater(),
              upper,
              lower,
              sigma,
              sigmaLower,
              layer.isUndrained() || !wet ? 0 : pore.at(upper),
              layer.isUndrained() || !wet ? 0 : pore.at(lower));
      double earthShare = width.earth(state, layer, excavation - mid);
      double waterShare = width.water(excavation - mid);
      for (PressureSegment segment : stretch.segments()) {
        out.add(width.whole() ? segment : segment.on(earthShare, waterShare));
      }
      sigma = sigmaLower;
      upper = lower;
    }
    return new PressureDiagram(state, out);
  }

  private static void addInside(Set<Double> levels, double level, double top, double bottom) {
    if (level < top && level > bottom) {
      levels.add(level);
    }
  }

  private PressureNode freeWater(Side side, double level) {
    double u = ground.gammaWater() * (side.waterLevel() - level);
    return new PressureNode(
        level,
        side.groundLevel() - level,
        "water",
        u,
        u,
        0,
        0,
        0,
        0,
        0,
        0,
        PressureNode.Limit.NONE,
        ground.factors().onPermanent(),
        ground.factors().onWater());
  }
}
