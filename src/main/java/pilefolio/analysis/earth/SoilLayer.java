package pilefolio.analysis.earth;

/**
 * One layer of ground.
 *
 * @param name what the layer is called in tables
 * @param topLevel level of its top, m
 * @param bottomLevel level of its bottom, m; may be negative infinity for the last layer
 * @param gammaAbove unit weight above the water level, kN/m³
 * @param gammaBelow unit weight below the water level (saturated), kN/m³
 * @param strength drained or undrained strength
 */
public record SoilLayer(
    String name,
    double topLevel,
    double bottomLevel,
    double gammaAbove,
    double gammaBelow,
    Strength strength) {

  public SoilLayer {
    if (!(topLevel > bottomLevel)) {
      throw new OutsideRange("layer " + name + ": the top must lie above the bottom");
    }
    if (!(gammaAbove > 0 && gammaBelow > 0)) {
      throw new OutsideRange("layer " + name + ": unit weights must be more than zero");
    }
  }

  /** Whether the layer is analysed in total stress. */
  public boolean isUndrained() {
    return strength instanceof UndrainedStrength;
  }

  /**
   * The part between two levels, m; undrained strength goes on growing from the top of the layer.
   */
  SoilLayer between(double upper, double lower) {
    Strength part = strength;
    if (strength instanceof UndrainedStrength u) {
      part = new UndrainedStrength(u.at(topLevel - upper), u.suIncrease(), u.adhesionRatio());
    }
    return new SoilLayer(name, upper, lower, gammaAbove, gammaBelow, part);
  }

  /** The part between two levels, m, with shares of its undrained strength at both ends. */
  SoilLayer softened(double upper, double lower, double shareAtTop, double shareAtBottom) {
    UndrainedStrength u = (UndrainedStrength) strength;
    double top = shareAtTop * u.at(topLevel - upper);
    double bottom = shareAtBottom * u.at(topLevel - lower);
    return new SoilLayer(
        name + " (softened)",
        upper,
        lower,
        gammaAbove,
        gammaBelow,
        new UndrainedStrength(top, (bottom - top) / (upper - lower), u.adhesionRatio()));
  }

  /** Cohesion c' of a drained layer or s_u of an undrained one at a level, kPa. */
  public double cohesionAt(double level) {
    if (strength instanceof UndrainedStrength u) {
      return u.at(topLevel - level);
    }
    return ((DrainedStrength) strength).cohesion();
  }
}
