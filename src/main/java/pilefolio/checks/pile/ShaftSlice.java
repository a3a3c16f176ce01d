package pilefolio.checks.pile;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import pilefolio.model.Drainage;
import pilefolio.model.GroundProfile;
import pilefolio.model.Layer;
import pilefolio.model.SoilKind;
import pilefolio.model.Value;

/**
 * A stretch of the shaft below excavation level within one layer.
 *
 * @param layer the layer
 * @param top level of the top of the slice, m
 * @param bottom level of its bottom, m
 * @param waterLevel level of the water, m; negative infinity if there is none
 * @param counts false if it lies in an exclusion zone or in ground that is not relied on
 * @param besidePrimaries true if the primaries stand beside it
 */
record ShaftSlice(
    Layer layer,
    double top,
    double bottom,
    double waterLevel,
    boolean counts,
    boolean besidePrimaries) {

  /** Thicker slices would lose the growth of resistance with depth. */
  private static final double THICKEST = 1.5;

  /** Clay near the surface dries, softens and is disturbed. */
  private static final double TOP_EXCLUSION = 1.5;

  /**
   * Where the shaft stands.
   *
   * @param excavation level from which the shaft counts, m
   * @param toe level of the toe, m
   * @param primaryToe level of the toe of the primaries, m
   * @param water level of the water in front, m; negative infinity if there is none
   * @param diameter of the pile, m
   */
  record Place(double excavation, double toe, double primaryToe, double water, double diameter) {}

  /** Cuts the shaft at layers, at exclusion zones, at the water and at the toe of the primaries. */
  static List<ShaftSlice> cut(GroundProfile profile, Place place) {
    TreeSet<Double> levels = new TreeSet<>();
    add(levels, place, place.excavation());
    add(levels, place, place.toe());
    add(levels, place, place.primaryToe());
    add(levels, place, place.water());
    add(levels, place, place.excavation() - TOP_EXCLUSION);
    add(levels, place, place.toe() + place.diameter());
    for (Layer layer : profile.layers()) {
      add(levels, place, layer.top().si());
    }
    List<ShaftSlice> slices = new ArrayList<>();
    Double upper = null;
    for (double lower : levels.descendingSet()) {
      if (upper != null && upper - lower > 1e-6) {
        addPieces(slices, profile, place, upper, lower);
      }
      upper = lower;
    }
    return slices;
  }

  private static void add(TreeSet<Double> levels, Place place, double level) {
    if (level <= place.excavation() && level >= place.toe()) {
      levels.add(level);
    }
  }

  private static void addPieces(
      List<ShaftSlice> slices, GroundProfile profile, Place place, double upper, double lower) {
    int pieces = Math.max(1, (int) Math.ceil((upper - lower) / THICKEST - 1e-9));
    double step = (upper - lower) / pieces;
    Layer layer = layerAt(profile, (upper + lower) / 2);
    boolean clay = layer.drainage() == Drainage.UNDRAINED;
    for (int i = 0; i < pieces; i++) {
      double top = upper - i * step;
      double bottom = i + 1 == pieces ? lower : upper - (i + 1) * step;
      double middle = (top + bottom) / 2;
      boolean excluded =
          layer.kind() == SoilKind.FILL
              || (clay
                  && (middle > place.excavation() - TOP_EXCLUSION
                      || middle < place.toe() + place.diameter()));
      slices.add(
          new ShaftSlice(
              layer, top, bottom, place.water(), !excluded, middle > place.primaryToe()));
    }
  }

  /** The layer at a level. */
  static Layer layerAt(GroundProfile profile, double level) {
    Layer found = profile.layers().get(0);
    for (Layer layer : profile.layers()) {
      if (layer.top().si() >= level) {
        found = layer;
      }
    }
    return found;
  }

  /** True if undrained strength governs. */
  boolean clay() {
    return layer.drainage() == Drainage.UNDRAINED;
  }

  /** Level of the middle, m. */
  double middle() {
    return (top + bottom) / 2;
  }

  /** Thickness, m. */
  double thickness() {
    return top - bottom;
  }

  /** Length that counts, m. */
  double counted() {
    return counts ? thickness() : 0;
  }

  /** Unit weight: saturated below the water. */
  Value unitWeight() {
    return middle() < waterLevel ? layer.unitWeightBelow() : layer.unitWeight();
  }

  /** Undrained shear strength of a layer at a level, Pa. */
  static double shearStrength(Layer layer, double level) {
    double increase = layer.shearStrengthIncrease().map(Value::si).orElse(0.0);
    return layer.shearStrength().orElseThrow().si() + increase * (layer.top().si() - level);
  }
}
