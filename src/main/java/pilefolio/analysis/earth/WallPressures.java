package pilefolio.analysis.earth;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
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
  private final Map<SoilLayer, Coefficients> behind = new HashMap<>();
  private final Map<SoilLayer, Coefficients> front = new HashMap<>();

  /**
   * @throws OutsideRange if the method cannot give coefficients for a layer
   */
  public WallPressures(WallGround ground) {
    this.ground = ground;
    double slope = ground.surroundings().slopeBehindRad();
    for (SoilLayer layer : ground.layers(true).layers()) {
      if (layer.bottomLevel() < ground.behind().groundLevel()) {
        behind.put(layer, ground.method().of(layer.strength(), slope));
      }
    }
    for (SoilLayer layer : ground.layers(false).layers()) {
      if (layer.bottomLevel() < ground.front().groundLevel()) {
        front.put(layer, ground.method().of(layer.strength(), 0));
      }
    }
  }

  /** The ground these pressures come from. */
  public WallGround ground() {
    return ground;
  }

  /**
   * Coefficients used in a layer: active ones as behind the wall, passive ones as in front. In an
   * earthquake they are those before it.
   */
  public Coefficients coefficients(SoilLayer layer) {
    Coefficients b = behind.get(layer);
    Coefficients f = front.get(layer);
    return b == null ? f : f == null ? b : b.withPassiveOf(f);
  }

  /** Pressure behind the wall from its top down to the toe level. */
  public PressureDiagram behind(Mobilisation state, double toe) {
    return diagram(true, state, toe, true);
  }

  /** Pressure in front of the wall from the excavation (or free water) down to the toe level. */
  public PressureDiagram front(Mobilisation state, double toe) {
    return diagram(false, state, toe, true);
  }

  /**
   * Pressure on one side as it acts where it acts, not as a mean over the length of wall. It has
   * the stretches of the mean.
   */
  public PressureDiagram where(boolean behindSide, Mobilisation state, double toe) {
    return diagram(behindSide, state, toe, false);
  }

  private PressureDiagram diagram(
      boolean behindSide, Mobilisation state, double toe, boolean mean) {
    Side side = behindSide ? ground.behind() : ground.front();
    PressureFactors f = ground.factors();
    List<PressureSegment> out = new ArrayList<>();
    if (side.waterLevel() > side.groundLevel()) {
      double bottom = Math.max(side.groundLevel(), toe);
      out.add(new PressureSegment(freeWater(side, side.waterLevel()), freeWater(side, bottom)));
    }
    List<Stretch> stretches = stretches(behindSide, state, toe);
    boolean loaded = behindSide && state == Mobilisation.ACTIVE;
    AddedPressure added =
        loaded ? AddedPressure.of(ground, stretches, behind, toe) : AddedPressure.none(ground);
    ActingWidth width = f.width();
    double excavation = ground.front().groundLevel();
    for (Stretch stretch : stretches) {
      double mid = (stretch.upper() + stretch.lower()) / 2;
      double earthShare = width.earth(state, stretch.layer(), excavation - mid);
      double waterShare = width.water(excavation - mid);
      for (PressureSegment segment : stretch.segments()) {
        PressureSegment all = loaded ? added.to(segment, stretch) : segment;
        out.add(width.whole() || !mean ? all : all.on(earthShare, waterShare));
      }
    }
    return new PressureDiagram(state, out);
  }

  private List<Stretch> stretches(boolean behindSide, Mobilisation state, double toe) {
    Side side = behindSide ? ground.behind() : ground.front();
    CohesionRule rule = behindSide ? ground.ruleBehind() : ground.ruleFront();
    PorePressure pore = PorePressure.of(ground, behindSide, toe);
    PressureFactors f = ground.factors();
    double freeWaterDepth = Math.max(0, side.waterLevel() - side.groundLevel());
    double sigma =
        side.permanentSurcharge()
            + ground.gammaWater() * freeWaterDepth
            + (state == Mobilisation.ACTIVE
                ? side.variableSurcharge() * f.onVariable() / f.onPermanent()
                : 0);
    List<Stretch> stretches = new ArrayList<>();
    double upper = side.groundLevel();
    for (double lower : levels(behindSide, state, toe).descendingSet()) {
      if (lower >= upper) {
        continue;
      }
      double mid = (upper + lower) / 2;
      SoilLayer layer = ground.layers(behindSide).below(mid);
      boolean wet = pore.wet(layer, mid);
      double sigmaLower = sigma + (wet ? layer.gammaBelow() : layer.gammaAbove()) * (upper - lower);
      boolean total = layer.isUndrained() || !wet;
      stretches.add(
          new Stretch(
              side,
              rule,
              state,
              layer,
              coefficients(behindSide, state, layer, wet),
              f,
              ground.gammaWater(),
              upper,
              lower,
              sigma,
              sigmaLower,
              total ? 0 : pore.below(layer, upper),
              total ? 0 : pore.above(layer, lower)));
      sigma = sigmaLower;
      upper = lower;
    }
    return stretches;
  }

  private NavigableSet<Double> levels(boolean behindSide, Mobilisation state, double toe) {
    Side side = behindSide ? ground.behind() : ground.front();
    TreeSet<Double> levels = new TreeSet<>();
    levels.add(toe);
    addInside(levels, side.waterLevel(), side.groundLevel(), toe);
    for (SoilLayer layer : ground.layers(behindSide).layers()) {
      addInside(levels, layer.topLevel(), side.groundLevel(), toe);
    }
    ActingWidth width = ground.factors().width();
    double excavation = ground.front().groundLevel();
    if (!width.whole()) {
      addInside(levels, excavation, side.groundLevel(), toe);
      addInside(levels, excavation - width.neglected(), side.groundLevel(), toe);
    }
    Surroundings around = ground.surroundings();
    around
        .water()
        .ifPresent(
            w -> w.breaks(behindSide).forEach(l -> addInside(levels, l, side.groundLevel(), toe)));
    if (behindSide && state == Mobilisation.ACTIVE) {
      around.loadBreaks().forEach(l -> addInside(levels, l, side.groundLevel(), toe));
      if (around.earthquake().isPresent()) {
        addInside(levels, excavation, side.groundLevel(), toe);
        AddedPressure.suctionLevels(ground)
            .forEach(l -> addInside(levels, l, side.groundLevel(), toe));
      }
    }
    return levels;
  }

  /** Coefficients in a layer; in an earthquake the passive one falls. */
  private Coefficients coefficients(
      boolean behindSide, Mobilisation state, SoilLayer layer, boolean wet) {
    Coefficients c = (behindSide ? behind : front).get(layer);
    Optional<Earthquake> quake = ground.surroundings().earthquake();
    if (state == Mobilisation.ACTIVE || quake.isEmpty()) {
      return c;
    }
    return c.withPassive(quake.get().passive(layer, c.kP(), wet, ground.gammaWater()));
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
        ground.factors().onWater(),
        Added.NOTHING);
  }
}
