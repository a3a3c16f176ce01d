package pilefolio.model;

/** Which beams turn an envelope of apparent pressure into the forces that are designed for. */
public enum ApparentBeam implements Choice {
  /** Simple beams between hinges at the supports. */
  HINGES("Hinges at supports"),
  /** Tributary areas. */
  TRIBUTARY("Tributary areas"),
  /** One continuous beam. */
  CONTINUOUS("Continuous beam"),
  /** The greatest of the three, support by support. */
  GREATEST("Greatest of all");

  private final String label;

  ApparentBeam(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
