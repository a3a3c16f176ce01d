package pilefolio.model;

/** One of a fixed list of answers; the label is what a cell of the workbook holds. */
public interface Choice {
  /** The answer as the user reads and types it. */
  String label();
}
