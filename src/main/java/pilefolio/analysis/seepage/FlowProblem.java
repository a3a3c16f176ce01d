package pilefolio.analysis.seepage;

import java.util.List;

/**
 * Steady flow under a tight wall in layered ground over a tight base. Where the water table behind
 * stands in the ground, it is held at its level: no drawdown, which errs on the side of more flow.
 *
 * @param layers from the top down without gaps; their lowest bottom is the tight base
 * @param surfaceBehind level at which water enters behind: the water table, or the ground under
 *     free water, m
 * @param headBehind level of the water behind, m
 * @param surfaceFront level at which water leaves in front, m
 * @param headFront level of the water in front, m
 * @param toe level of the toe of the wall, m, below both surfaces and above the base
 * @param widthBehind distance to the tight boundary behind, m
 * @param widthFront distance to the tight boundary in front, such as the middle of an excavation
 *     with two walls, m
 */
public record FlowProblem(
    List<PermeableLayer> layers,
    double surfaceBehind,
    double headBehind,
    double surfaceFront,
    double headFront,
    double toe,
    double widthBehind,
    double widthFront) {

  /** Distance of the boundaries over the depth of the ground beyond which they do not matter. */
  public static final double FAR = 6;

  /**
   * @throws IllegalArgumentException if the wall does not end between the surfaces and the base, or
   *     the layers do not cover the ground that water flows through
   */
  public FlowProblem {
    layers = List.copyOf(layers);
    double base = layers.get(layers.size() - 1).bottom();
    if (!(toe < Math.min(surfaceBehind, surfaceFront) && toe > base)) {
      throw new IllegalArgumentException(
          "water flows round the toe only if it ends below both water surfaces and above the"
              + " tight base");
    }
    if (layers.get(0).top() < Math.max(surfaceBehind, surfaceFront) - 1e-9) {
      throw new IllegalArgumentException("the layers start below the surface of the ground water");
    }
    if (!(headBehind >= surfaceBehind - 1e-9 && headFront >= surfaceFront - 1e-9)) {
      throw new IllegalArgumentException("water stands at or above the surface it flows through");
    }
    if (!(widthBehind > 0 && widthFront > 0)) {
      throw new IllegalArgumentException("the widths must be more than zero");
    }
  }

  /** Boundaries far enough away not to matter. */
  public static FlowProblem wide(
      List<PermeableLayer> layers,
      double surfaceBehind,
      double headBehind,
      double surfaceFront,
      double headFront,
      double toe) {
    double depth = Math.max(surfaceBehind, surfaceFront) - layers.get(layers.size() - 1).bottom();
    return new FlowProblem(
        layers, surfaceBehind, headBehind, surfaceFront, headFront, toe, FAR * depth, FAR * depth);
  }

  /** Level of the tight base, m. */
  public double base() {
    return layers.get(layers.size() - 1).bottom();
  }

  /** Difference of head, m; positive for flow toward the excavation. */
  public double headLoss() {
    return headBehind - headFront;
  }

  PermeableLayer layerAt(double level) {
    for (PermeableLayer layer : layers) {
      if (level > layer.bottom()) {
        return layer;
      }
    }
    return layers.get(layers.size() - 1);
  }
}
