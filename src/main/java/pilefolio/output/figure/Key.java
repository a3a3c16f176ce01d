package pilefolio.output.figure;

import java.util.List;

/** The key of a plot: a piece of each line or fill with its name. */
public final class Key {
  private static final double SAMPLE = 7;

  private Key() {}

  /**
   * One entry.
   *
   * @param name what the line means
   * @param pen the line, or null
   * @param fill the fill, or null
   */
  public record Entry(String name, Pen pen, Ink fill) {
    /** A line. */
    public static Entry line(String name, Pen pen) {
      return new Entry(name, pen, null);
    }

    /** A fill. */
    public static Entry fill(String name, Ink fill) {
      return new Entry(name, null, fill);
    }
  }

  /**
   * Draws entries in rows from left to right.
   *
   * @param width room in mm; a row that is full goes on below
   * @return height used in mm
   */
  public static double inRows(
      Canvas canvas, double x, double y, double width, List<Entry> entries) {
    Lettering lettering = Lettering.SMALL.centred();
    double at = x;
    double row = y + 1.5;
    for (Entry entry : entries) {
      double need = SAMPLE + 1.5 + canvas.textWidth(entry.name(), lettering) + 5;
      if (at > x && at + need - 5 > x + width) {
        at = x;
        row += 3.6;
      }
      sample(canvas, at, row, entry);
      canvas.text(at + SAMPLE + 1.5, row, entry.name(), lettering);
      at += need;
    }
    return row - y + 2;
  }

  private static void sample(Canvas canvas, double x, double y, Entry entry) {
    if (entry.fill() != null) {
      canvas.rectangle(null, entry.fill(), x, y - 1.1, SAMPLE, 2.2);
    }
    if (entry.pen() != null) {
      canvas.line(entry.pen(), x, y, x + SAMPLE, y);
    }
  }
}
