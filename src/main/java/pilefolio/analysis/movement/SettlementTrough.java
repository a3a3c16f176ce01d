package pilefolio.analysis.movement;

/**
 * Movement of the ground surface behind a wall.
 *
 * @param shape the published shape
 * @param height retained height, m, greater than zero
 * @param settlement greatest settlement, m, zero or more
 * @param horizontal greatest horizontal movement toward the excavation, m, zero or more
 */
public record SettlementTrough(
    TroughShape shape, double height, double settlement, double horizontal) {

  /**
   * Checks the values.
   *
   * @throws IllegalArgumentException if the height is not positive or a movement is negative
   */
  public SettlementTrough {
    if (!(height > 0) || !(settlement >= 0) || !(horizontal >= 0)) {
      throw new IllegalArgumentException("a trough needs a height and movements of zero or more");
    }
  }

  /**
   * Trough whose greatest settlement is a share of the greatest displacement of the wall.
   *
   * @param shape the shape
   * @param height retained height, m
   * @param displacement greatest displacement of the wall, m
   * @param ratio greatest settlement over greatest displacement
   * @return the trough
   */
  public static SettlementTrough ofRatio(
      TroughShape shape, double height, double displacement, double ratio) {
    return new SettlementTrough(shape, height, ratio * displacement, displacement);
  }

  /**
   * Trough that holds as much ground as the wall sweeps when it bends: ground that does not change
   * its volume.
   *
   * @param shape the shape
   * @param height retained height, m
   * @param wall the deflected wall
   * @return the trough
   */
  public static SettlementTrough ofVolume(TroughShape shape, double height, WallDeflection wall) {
    return new SettlementTrough(
        shape, height, Math.max(0, wall.volume()) / (shape.area() * height), wall.greatest());
  }

  /** Settlement at a distance from the wall, m. */
  public double settlementAt(double distance) {
    return settlement * shape.fraction(distance / height);
  }

  /** Horizontal movement toward the excavation at a distance from the wall, m. */
  public double horizontalAt(double distance) {
    return horizontal * shape.horizontalFraction(distance / height);
  }

  /** Distance at which the settlement ends, m. */
  public double reach() {
    return shape.reach() * height;
  }

  /** Volume of the trough for one metre of wall, m³/m. */
  public double volume() {
    return settlement * height * shape.area();
  }
}
