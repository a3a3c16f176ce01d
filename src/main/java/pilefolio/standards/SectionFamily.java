package pilefolio.standards;

/** Families of hot-rolled I and H sections, each with its own table file. */
public enum SectionFamily {
  /** American wide-flange shapes. */
  W("w.csv", true),
  /** American bearing piles. */
  HP_US("hp-us.csv", true),
  /** European wide-flange beams HE A, B, M and their variants. */
  HE("he.csv", false),
  /** European I beams. */
  IPE("ipe.csv", false),
  /** European bearing piles. */
  HP("hp.csv", false),
  /** British universal beams. */
  UB("ub.csv", false),
  /** British universal columns. */
  UC("uc.csv", false),
  /** British universal bearing piles. */
  UBP("ubp.csv", false);

  private final String file;
  private final boolean inches;

  SectionFamily(String file, boolean inches) {
    this.file = file;
    this.inches = inches;
  }

  /** Name of the table file. */
  String file() {
    return file;
  }

  /** True if the table is kept in inches. */
  public boolean inches() {
    return inches;
  }
}
