package pilefolio.output.figure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * A scale of a plot with its ticks at round values.
 *
 * @param title what is plotted and its unit, in the markup of {@link Label}
 * @param low lower end
 * @param high upper end, above low
 * @param reversed true when values grow towards the start: downwards for depths, leftwards
 * @param ticks values with their labels, from low to high
 */
public record Axis(String title, double low, double high, boolean reversed, List<Tick> ticks) {

  /**
   * A value marked on the scale.
   *
   * @param value position
   * @param label text; empty for a mark without text
   */
  public record Tick(double value, String label) {}

  /** Copies the ticks and refuses an empty or unbounded range. */
  public Axis {
    ticks = List.copyOf(ticks);
    if (!(low < high) || Double.isInfinite(low) || Double.isInfinite(high)) {
      throw new IllegalArgumentException("axis \"" + title + "\" from " + low + " to " + high);
    }
  }

  /**
   * A scale whose ends are ticks, so that everything from the least to the greatest value fits.
   *
   * @param about number of steps aimed at
   */
  public static Axis rounded(String title, double least, double greatest, int about) {
    double from = least;
    double to = greatest;
    if (from == to) {
      double room = from == 0 ? 1 : Math.abs(from) * 0.5;
      from -= from > 0 && from - room < 0 ? from : room;
      to += room;
    }
    double step = step((to - from) / about);
    double low = Math.floor(from / step + 1e-9) * step;
    double high = Math.ceil(to / step - 1e-9) * step;
    return new Axis(title, low, high, false, ticks(low, high, step));
  }

  /**
   * A scale with exactly the ends given and ticks at the round values between them.
   *
   * @param about number of steps aimed at
   */
  public static Axis between(String title, double low, double high, int about) {
    return new Axis(title, low, high, false, ticks(low, high, step((high - low) / about)));
  }

  /** The same scale with values growing the other way. */
  public Axis reverse() {
    return new Axis(title, low, high, !reversed, ticks);
  }

  /** Part of the length at which a value lies, 0 at the start and 1 at the end. */
  public double share(double value) {
    double share = (value - low) / (high - low);
    return reversed ? 1 - share : share;
  }

  /** A number as the scale writes it: real minus sign, no needless zeros. */
  public static String number(double value, double step) {
    int decimals = Math.max(0, -(int) Math.floor(Math.log10(step) + 1e-9));
    BigDecimal rounded = new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP);
    if (rounded.signum() == 0) {
      return "0";
    }
    return rounded.toPlainString().replace('-', '−');
  }

  private static List<Tick> ticks(double low, double high, double step) {
    // A step of 2.5 needs one more decimal than its size tells.
    double lead = step / Math.pow(10, Math.floor(Math.log10(step) + 1e-9));
    double shown = Math.abs(lead - 2.5) < 1e-6 ? step / 10 : step;
    List<Tick> ticks = new ArrayList<>();
    long first = (long) Math.ceil(low / step - 1e-9);
    long last = (long) Math.floor(high / step + 1e-9);
    for (long k = first; k <= last; k++) {
      ticks.add(new Tick(k * step, number(k * step, shown)));
    }
    return ticks;
  }

  private static double step(double wanted) {
    double power = Math.pow(10, Math.floor(Math.log10(wanted)));
    double lead = wanted / power;
    double round = lead <= 1.0001 ? 1 : lead <= 2.0001 ? 2 : lead <= 2.5001 ? 2.5 : 5;
    return lead > 5.0001 ? 10 * power : round * power;
  }
}
