package pilefolio.analysis.earth;

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
