package pilefolio.model;

/** What holds the wall below its lowest support under apparent pressure. */
public enum ApparentFoot implements Choice {
  /** The ground, at the design excavation level. */
  REACTION("Reaction at excavation level"),
  /** Nothing. */
  OVERHANG("Overhang");

  private final String label;

  ApparentFoot(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
