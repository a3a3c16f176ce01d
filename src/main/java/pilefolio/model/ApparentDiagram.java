package pilefolio.model;

/** Which envelope of apparent pressure is taken for walls with several supports. */
public enum ApparentDiagram implements Choice {
  /** By the ground beside the wall and the kind of supports. */
  BY_GROUND("By the ground"),
  /** Constant with depth, for struts in sand. */
  SAND("Sand, constant"),
  /** Trapezoid with ramps of a quarter, for struts in stiff clay. */
  STIFF_CLAY("Stiff clay"),
  /** Ramp of a quarter at the top, for struts in soft to medium clay. */
  SOFT_CLAY("Soft to medium clay"),
  /** The same shape with the term for ground that moves from below the base. */
  SOFT_CLAY_DEEP("Soft clay, deep movement"),
  /** Trapezoid whose ramps follow the support levels, in sand; for one level too. */
  LEVELS_SAND("Sand, by support levels"),
  /** Trapezoid whose ramps follow the support levels, in stiff clay; for one level too. */
  LEVELS_CLAY("Stiff clay, by support levels"),
  /** No envelope. */
  NONE("None");

  private final String label;

  ApparentDiagram(String label) {
    this.label = label;
  }

  /** True if the ramps follow the support levels. */
  public boolean byLevels() {
    return this == LEVELS_SAND || this == LEVELS_CLAY;
  }

  @Override
  public String label() {
    return label;
  }
}
