package pilefolio.workbook;

/** What stands in a cell, before it is known what should stand there. */
sealed interface CellContent {
  /** Nothing. */
  record Empty() implements CellContent {}

  /** Text, as typed. */
  record Words(String text) implements CellContent {}

  /**
   * A number.
   *
   * @param value as stored
   * @param date true if the cell shows it as a date or a time
   * @param percent true if the cell shows it as per cent
   */
  record Figure(double value, boolean date, boolean percent) implements CellContent {}

  /** True or false. */
  record Truth(boolean value) implements CellContent {}

  /** Something that cannot be used; a finding has been reported. */
  record Unusable() implements CellContent {}
}
