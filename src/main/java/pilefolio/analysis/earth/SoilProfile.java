package pilefolio.analysis.earth;

import java.util.ArrayList;
import java.util.List;

/**
 * Layers from the top down, each starting where the one above ends.
 *
 * @param layers at least one layer
 */
public record SoilProfile(List<SoilLayer> layers) {

  public SoilProfile {
    layers = List.copyOf(layers);
    if (layers.isEmpty()) {
      throw new OutsideRange("a ground profile needs at least one layer");
    }
    for (int i = 1; i < layers.size(); i++) {
      if (Math.abs(layers.get(i).topLevel() - layers.get(i - 1).bottomLevel()) > 1e-9) {
        throw new OutsideRange(
            "layer "
                + layers.get(i).name()
                + " does not start where layer "
                + layers.get(i - 1).name()
                + " ends");
      }
    }
  }

  /**
   * The same layers with undrained ground softened below a level: its strength there is a share of
   * its own and grows in a straight line to all of it.
   *
   * @param level level of the excavation, m
   * @param depth depth over which it has softened, m, more than zero
   * @param share share of the strength left at the level, 0 to 1
   * @throws OutsideRange if a value leaves its range
   */
  public SoilProfile softenedBelow(double level, double depth, double share) {
    if (!(depth > 0 && share >= 0 && share <= 1)) {
      throw new OutsideRange(
          "softened ground needs a depth and a share of strength between 0 and 1");
    }
    double end = level - depth;
    List<SoilLayer> out = new ArrayList<>();
    for (SoilLayer layer : layers) {
      double top = Math.min(layer.topLevel(), level);
      double bottom = Math.max(layer.bottomLevel(), end);
      if (!layer.isUndrained() || top <= bottom) {
        out.add(layer);
        continue;
      }
      if (layer.topLevel() > top) {
        out.add(layer.between(layer.topLevel(), top));
      }
      out.add(
          layer.softened(
              top,
              bottom,
              share + (1 - share) * (level - top) / depth,
              share + (1 - share) * (level - bottom) / depth));
      if (layer.bottomLevel() < bottom) {
        out.add(layer.between(bottom, layer.bottomLevel()));
      }
    }
    return new SoilProfile(out);
  }

  /** Level of the top of the first layer, m. */
  public double topLevel() {
    return layers.get(0).topLevel();
  }

  /** Level of the bottom of the last layer, m; negative infinity when it is not limited. */
  public double bottomLevel() {
    return layers.get(layers.size() - 1).bottomLevel();
  }

  /** The layer just below a level. */
  public SoilLayer below(double level) {
    for (SoilLayer layer : layers) {
      if (level > layer.bottomLevel()) {
        return layer;
      }
    }
    return layers.get(layers.size() - 1);
  }
}
