package pilefolio.workbook;

/** Columns of levels: elevations, never depths. */
final class Levels {
  private Levels() {}

  /** An optional level. Places on dry land lie between −450 m and 6000 m. */
  static NumberColumn level(String name, String meaning) {
    return NumberColumn.number(name, "m", meaning + " An elevation.").hard(-500, 6000);
  }
}
