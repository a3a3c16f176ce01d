package pilefolio.analysis.earth;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import pilefolio.analysis.load.PressurePolyline;

/**
 * Pore pressures that do not follow from one water level on each side: heads along both faces of
 * the wall from a flow net, and layers with a level of their own (artesian or perched).
 *
 * @param behind heads above their own level along the face behind, as pore pressure in kPa; empty
 *     if the water levels hold
 * @param front the same in front
 * @param ownLevel water level of layers that have their own, m, by name
 */
public record WaterField(
    PressurePolyline behind, PressurePolyline front, Map<String, Double> ownLevel) {

  /** Copies the map. */
  public WaterField {
    ownLevel = Map.copyOf(ownLevel);
  }

  /** Layers with a level of their own and nothing else. */
  public static WaterField ofLayers(Map<String, Double> levels) {
    return new WaterField(PressurePolyline.NONE, PressurePolyline.NONE, levels);
  }

  /** The same with pore pressures along the two faces. */
  public WaterField withFaces(PressurePolyline ofBehind, PressurePolyline ofFront) {
    return new WaterField(ofBehind, ofFront, ownLevel);
  }

  /**
   * The water level of a layer's own; in front only where the excavation does not open the layer.
   *
   * @param layer layer
   * @param excavation level of the excavation if the side is the front
   */
  Optional<Double> ownLevel(SoilLayer layer, OptionalDouble excavation) {
    if (excavation.isPresent() && layer.topLevel() > excavation.getAsDouble() - 1e-9) {
      return Optional.empty();
    }
    return Optional.ofNullable(ownLevel.get(layer.name()));
  }

  /** Levels at which pore pressure on one side breaks. */
  List<Double> breaks(boolean behindSide) {
    List<Double> levels = new ArrayList<>(ownLevel.values());
    (behindSide ? behind : front).points().forEach(p -> levels.add(p.level()));
    return levels;
  }

  /** Pore pressures along a face. */
  PressurePolyline face(boolean behindSide) {
    return behindSide ? behind : front;
  }
}
