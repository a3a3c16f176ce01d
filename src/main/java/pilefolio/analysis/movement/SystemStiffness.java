package pilefolio.analysis.movement;

/** Stiffness of a wall and the spacing of its supports in one number without unit. */
public final class SystemStiffness {
  /** A system below this is called flexible. UFC 3-220-20, with Eq. 2-2. */
  public static final double FLEXIBLE_BELOW = 50;

  /** A system above this is called stiff. UFC 3-220-20, with Eq. 2-2. */
  public static final double STIFF_ABOVE = 100;

  private SystemStiffness() {}

  /**
   * EI/(γ·h⁴). With the unit weight of water after Clough et al. (1989); with that of the ground
   * UFC 3-220-20, Eq. 2-2.
   *
   * @param bendingStiffness EI of one metre of wall, kNm²/m
   * @param unitWeight unit weight, kN/m³
   * @param spacing average vertical distance of supports, m
   * @return the stiffness of the system
   * @throws IllegalArgumentException if a value is not greater than zero
   */
  public static double of(double bendingStiffness, double unitWeight, double spacing) {
    if (!(bendingStiffness > 0) || !(unitWeight > 0) || !(spacing > 0)) {
      throw new IllegalArgumentException("stiffness, unit weight and spacing must be positive");
    }
    return bendingStiffness / (unitWeight * Math.pow(spacing, 4));
  }
}
