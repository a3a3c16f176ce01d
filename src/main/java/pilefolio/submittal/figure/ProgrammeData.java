package pilefolio.submittal.figure;

import java.util.List;

/**
 * Work day by day.
 *
 * @param id name of the figure in the document
 * @param caption one sentence
 * @param days calendar days in order, without gaps
 * @param rows rows of bars from top to bottom
 */
public record ProgrammeData(String id, String caption, List<Day> days, List<Row> rows) {

  /**
   * A calendar day.
   *
   * @param month month, printed where it begins, such as {@code March 2026}
   * @param number day of the month
   * @param weekday one or two letters
   * @param off true when nobody works
   */
  public record Day(String month, int number, String weekday, boolean off) {}

  /**
   * A row.
   *
   * @param name what is done, such as {@code Run A, primaries}
   * @param secondary true for secondaries, which are drawn in the accent colour
   * @param bars the bars
   */
  public record Row(String name, boolean secondary, List<Bar> bars) {
    /** Copies the bars. */
    public Row {
      bars = List.copyOf(bars);
    }
  }

  /**
   * Work on consecutive days.
   *
   * @param firstDay index of the first day, from 0
   * @param lastDay index of the last day
   * @param label text in or beside the bar, such as the marks; may be empty
   */
  public record Bar(int firstDay, int lastDay, String label) {}

  /** Copies the lists. */
  public ProgrammeData {
    days = List.copyOf(days);
    rows = List.copyOf(rows);
  }
}
