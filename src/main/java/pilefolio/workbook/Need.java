package pilefolio.workbook;

/** Whether a cell must be filled in. */
public enum Need {
  /** Must be filled in. */
  REQUIRED("required"),
  /** May be empty; then the stated default holds and is listed as an assumption. */
  DEFAULTED("default if empty"),
  /** May be empty; what depends on it is then left out or reported as not checked. */
  OPTIONAL("optional"),
  /** May be empty; the engine then finds the least that satisfies every check. */
  SIZED("sized if empty");

  private final String label;

  Need(String label) {
    this.label = label;
  }

  /** In words. */
  public String label() {
    return label;
  }
}
