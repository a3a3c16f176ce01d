package pilefolio.analysis.seepage;

/**
 * A layer as water sees it.
 *
 * @param top level of its top, m
 * @param bottom level of its bottom, m
 * @param kHorizontal permeability along the layer, m/s, more than zero
 * @param kVertical permeability across the layer, m/s, more than zero
 */
public record PermeableLayer(double top, double bottom, double kHorizontal, double kVertical) {

  /**
   * @throws IllegalArgumentException if a value leaves the range stated for it
   */
  public PermeableLayer {
    if (!(top > bottom)) {
      throw new IllegalArgumentException("the top of a layer must lie above its bottom");
    }
    if (!(kHorizontal > 0 && kVertical > 0)) {
      throw new IllegalArgumentException("permeability must be more than zero");
    }
  }

  /** A layer that lets water through equally in all directions. */
  public static PermeableLayer isotropic(double top, double bottom, double k) {
    return new PermeableLayer(top, bottom, k, k);
  }
}
