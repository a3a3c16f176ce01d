package pilefolio.model;

/** Kind of ground; decides the hatch and which rules for drilling apply. */
public enum SoilKind implements Choice {
  /** Made ground. */
  FILL("Fill"),
  /** Clay. */
  CLAY("Clay"),
  /** Silt. */
  SILT("Silt"),
  /** Sand. */
  SAND("Sand"),
  /** Gravel. */
  GRAVEL("Gravel"),
  /** Rock, weathered or sound. */
  ROCK("Rock");

  private final String label;

  SoilKind(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
