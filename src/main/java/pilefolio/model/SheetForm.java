package pilefolio.model;

/** Shape of a sheet pile. */
public enum SheetForm implements Choice {
  /** One web a sheet; interlocks in the flanges. */
  Z("Z"),
  /** Two webs a sheet; interlocks on the neutral axis of the wall. */
  U("U");

  private final String label;

  SheetForm(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
