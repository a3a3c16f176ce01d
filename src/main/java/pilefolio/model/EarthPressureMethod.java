package pilefolio.model;

/** How earth pressure coefficients are found. */
public enum EarthPressureMethod implements Choice {
  /** Smooth wall. */
  RANKINE("Rankine"),
  /** Wall friction by the numerical procedure of EN 1997-1 Annex C. */
  EN1997_C2("EN 1997-1 Annex C"),
  /** Plane wedges with wall friction. */
  COULOMB("Coulomb"),
  /** Plane wedges on the active side, the table of curved surfaces on the passive side. */
  CAQUOT_KERISEL("Caquot-Kerisel table");

  private final String label;

  EarthPressureMethod(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
