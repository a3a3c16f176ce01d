package pilefolio.checks;

/** The families of checks, in the order of the calculation package. */
public enum Family {
  /** Design values, pressures. */
  GROUND("Ground and earth pressures"),
  /** Embedment, equilibrium, effects in the wall. */
  STABILITY("Stability of the wall"),
  /** Beams, supports, primaries. */
  STRUCTURE("Structure"),
  /** Vertical capacity of piles. */
  PILE("Vertical capacity"),
  /** Overlap and joints. */
  GEOMETRY("Geometry in the ground"),
  /** Strength window, order, programme. */
  SEQUENCE("Sequence and age"),
  /** Volumes, rates, heads. */
  CONCRETE("Concrete and boring"),
  /** The rig against its rated values. */
  RIG("Rig and handling");

  private final String title;

  Family(String title) {
    this.title = title;
  }

  /** True if each wall run is a design of its own in this family. */
  public boolean byRun() {
    return compareTo(PILE) <= 0;
  }

  /** Title of the chapter. */
  public String title() {
    return title;
  }
}
