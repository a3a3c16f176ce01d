package pilefolio.analysis.movement;

/**
 * Magnitudes of movement in records of finished excavations, as a share of the retained height. A
 * second opinion beside a calculated wall, not a calculation.
 */
public enum EmpiricalMovement {
  /** Stiff clays, residual soils and sands. Clough and O'Rourke (1990). */
  STIFF_GROUND(0.002, 0.0015, 0.003),
  /** Soft clay with a margin of about 2 against heave of the base. UFC 3-220-20. */
  SOFT_CLAY_STABLE_BASE(Double.NaN, 0.01, 0.01),
  /** Soft clay, flexible wall, margin below 1.5 against heave of the base. UFC 3-220-20. */
  SOFT_CLAY_WEAK_BASE(Double.NaN, 0.02, 0.02);

  private final double averageHorizontal;
  private final double averageSettlement;
  private final double envelope;

  EmpiricalMovement(double averageHorizontal, double averageSettlement, double envelope) {
    this.averageHorizontal = averageHorizontal;
    this.averageSettlement = averageSettlement;
    this.envelope = envelope;
  }

  /** Average greatest displacement of the wall over the height; not a number if not stated. */
  public double averageHorizontal() {
    return averageHorizontal;
  }

  /** Average or typical greatest settlement over the height. */
  public double averageSettlement() {
    return averageSettlement;
  }

  /** Greatest settlement over the height that the records show. */
  public double envelope() {
    return envelope;
  }
}
