package pilefolio.analysis.staged;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import pilefolio.analysis.earth.Mobilisation;
import pilefolio.analysis.earth.PressureDiagram;
import pilefolio.analysis.earth.PressureNode;
import pilefolio.analysis.earth.PressureSegment;
import pilefolio.analysis.earth.Side;
import pilefolio.analysis.earth.SoilLayer;
import pilefolio.analysis.earth.SoilProfile;
import pilefolio.analysis.earth.WallGround;
import pilefolio.analysis.earth.WallPressures;

/**
 * One side of the wall in layered ground: limits from the diagrams of active and passive pressure,
 * at-rest pressure and modulus from the layers. Below the excavation single piles carry the
 * pressure at rest of their own width; springs and passive pressure act on the width that their
 * passive diagram has. Local loads and earthquake are added to all three pressures.
 */
public final class DiagramSide implements SoilSide {
  private static final double SAME = 1e-9;
  // What the diagrams call water above the ground.
  private static final String FREE_WATER = "water";

  /** Pressure at rest. */
  @FunctionalInterface
  public interface Rest {
    /**
     * Earth pressure at rest, kPa.
     *
     * @param level level, m
     * @param stress total vertical stress there, kPa
     * @param pore pore pressure that the active diagram carries there, kPa
     * @param seenFrom a level inside the same stretch, m
     */
    double at(double level, double stress, double pore, double seenFrom);
  }

  /** Modulus of subgrade reaction. */
  @FunctionalInterface
  public interface Modulus {
    /** Modulus in the layer that holds a level, kN/m³. */
    double at(double level);
  }

  private final PressureDiagram active;
  private final PressureDiagram passive;
  private final Rest rest;
  private final Modulus modulus;

  /**
   * @param active active pressure from the surface down
   * @param passive passive pressure of the same side
   * @param rest pressure at rest
   * @param modulus modulus of subgrade reaction
   */
  public DiagramSide(PressureDiagram active, PressureDiagram passive, Rest rest, Modulus modulus) {
    this.active = active;
    this.passive = passive;
    this.rest = rest;
    this.modulus = modulus;
  }

  /** The retained side of a wall down to its toe. */
  public static DiagramSide behind(
      WallPressures pressures, double toe, Function<SoilLayer, LayerSprings> springs) {
    return of(
        pressures,
        true,
        pressures.behind(Mobilisation.ACTIVE, toe),
        pressures.behind(Mobilisation.PASSIVE, toe),
        springs);
  }

  /** The excavated side of a wall down to its toe. */
  public static DiagramSide front(
      WallPressures pressures, double toe, Function<SoilLayer, LayerSprings> springs) {
    return of(
        pressures,
        false,
        pressures.front(Mobilisation.ACTIVE, toe),
        pressures.front(Mobilisation.PASSIVE, toe),
        springs);
  }

  /**
   * One side from its diagrams. At-rest pressure is the coefficient times effective vertical
   * stress; in undrained ground, whose limits are total pressures, hydrostatic pore pressure below
   * the water level of the side is taken off before and added after.
   */
  public static DiagramSide of(
      WallPressures pressures,
      boolean behindSide,
      PressureDiagram active,
      PressureDiagram passive,
      Function<SoilLayer, LayerSprings> springs) {
    WallGround ground = pressures.ground();
    Side side = behindSide ? ground.behind() : ground.front();
    SoilProfile layers = ground.layers(behindSide);
    return new DiagramSide(
        active,
        passive,
        (level, stress, pore, seenFrom) -> {
          SoilLayer layer = layers.below(seenFrom);
          double k = springs.apply(layer).atRest();
          if (!layer.isUndrained()) {
            return k * (stress - pore);
          }
          double u = ground.gammaWater() * Math.max(0, side.waterLevel() - level);
          return k * (stress - u) + u;
        },
        seenFrom -> springs.apply(layers.below(seenFrom)).modulus());
  }

  @Override
  public SpringLaw at(double level, double seenFrom) {
    PressureSegment low = find(active, seenFrom);
    if (low == null) {
      return SpringLaw.NOTHING;
    }
    double water = between(low, level, n -> n.waterFactor() * n.u());
    if (low.top().layer().equals(FREE_WATER)) {
      return new SpringLaw(0, 0, 0, 0, water);
    }
    double least = between(low, level, n -> n.earthFactor() * n.earth());
    PressureSegment high = find(passive, seenFrom);
    double most = high == null ? least : between(high, level, n -> n.earthFactor() * n.earth());
    double share = between(low, level, PressureNode::earthFactor);
    double added = between(low, level, n -> n.added().factored());
    double atRest =
        rest.at(
            level,
            between(low, level, PressureNode::sigmaV),
            between(low, level, PressureNode::u),
            seenFrom);
    return new SpringLaw(
        share * atRest + added,
        least + added,
        Math.max(most, least) + added,
        (high == null ? share : between(high, level, PressureNode::earthFactor))
            * modulus.at(seenFrom),
        water);
  }

  private static PressureSegment find(PressureDiagram diagram, double level) {
    for (PressureSegment s : diagram.segments()) {
      if (level <= s.top().level() + SAME && level >= s.bottom().level() - SAME) {
        return s;
      }
    }
    return null;
  }

  private static double between(
      PressureSegment s, double level, ToDoubleFunction<PressureNode> value) {
    double t = (s.top().level() - level) / (s.top().level() - s.bottom().level());
    double top = value.applyAsDouble(s.top());
    return top + t * (value.applyAsDouble(s.bottom()) - top);
  }

  @Override
  public List<Double> breaks() {
    List<Double> levels = new ArrayList<>(active.breaks());
    levels.addAll(passive.breaks());
    return levels;
  }
}
