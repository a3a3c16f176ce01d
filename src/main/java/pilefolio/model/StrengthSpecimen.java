package pilefolio.model;

/** Specimen on which a concrete strength is stated. */
public enum StrengthSpecimen implements Choice {
  /** Cylinder strength. */
  CYLINDER("Cylinder"),
  /** Cube strength. */
  CUBE("Cube");

  private final String label;

  StrengthSpecimen(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
