package pilefolio.model;

import java.util.List;
import java.util.Optional;
import pilefolio.findings.CellRef;

/**
 * The ground along some wall runs, from the surface downwards.
 *
 * @param at the first cell of the row
 * @param id name by which wall runs call it
 * @param investigation boreholes and soundings it rests on, in words
 * @param base level to which the ground is known; nothing may be founded on ground below it
 * @param groundwater water level while piles are bored, an elevation; absent if none was met
 * @param temperature temperature of the ground
 * @param layers from top to bottom; at least one
 */
public record GroundProfile(
    CellRef at,
    String id,
    String investigation,
    Value base,
    Optional<Value> groundwater,
    Value temperature,
    List<Layer> layers) {
  /** Copies the list. */
  public GroundProfile {
    layers = List.copyOf(layers);
  }

  /** Level of the bottom of a layer in metres: the top of the next, or the known base. */
  public double bottom(int layer) {
    return layer + 1 < layers.size() ? layers.get(layer + 1).top().si() : base.si();
  }
}
