package pilefolio.model;

/** Shape of a local load behind a wall. */
public enum LoadKind implements Choice {
  /** Long strip along the wall. */
  STRIP("Strip"),
  /** Long line along the wall. */
  LINE("Line"),
  /** Single force. */
  POINT("Point"),
  /** Rectangle of limited length. */
  FOOTING("Footing");

  private final String label;

  LoadKind(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
