package pilefolio.checks;

/** The families of checks, in the order of the calculation package. */
public enum Family {
  /** Design values, pressures. */
  GROUND("Ground and earth pressures", "ground"),
  /** Embedment, equilibrium, effects in the wall. */
  STABILITY("Stability of the wall", "stability"),
  /** Beams, supports, primaries. */
  STRUCTURE("Structure", "structure"),
  /** Vertical capacity of piles. */
  PILE("Vertical capacity", "capacity"),
  /** Movement of the wall, of the ground and of neighbours. */
  MOVEMENT("Movement of wall and ground", "movement"),
  /** The wall when assumptions change. */
  SENSITIVITY("Sensitivity", "sensitivity"),
  /** Overlap and joints. */
  GEOMETRY("Geometry in the ground", "joints"),
  /** Strength window, order, programme. */
  SEQUENCE("Sequence and age", "sequence"),
  /** Volumes, rates, heads. */
  CONCRETE("Concrete and boring", "concrete"),
  /** The rig against its rated values. */
  RIG("Rig and handling", "rig");

  private final String title;
  private final String shortName;

  Family(String title, String shortName) {
    this.title = title;
    this.shortName = shortName;
  }

  /** One word for tables. */
  public String shortName() {
    return shortName;
  }

  /** True if each wall run is a design of its own in this family. */
  public boolean byRun() {
    return compareTo(SENSITIVITY) <= 0;
  }

  /** Title of the chapter. */
  public String title() {
    return title;
  }
}
