package pilefolio.analysis.apparent;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import pilefolio.analysis.wall.NetPressure;
import pilefolio.analysis.wall.NetSegment;

/** Pressures that act together, such as an envelope, a surcharge and water. */
public final class Superposed {
  private static final double SAME_LEVEL = 1e-9;

  private Superposed() {}

  /** The sum of pressures; where one has no stretch it adds nothing. */
  public static NetPressure of(NetPressure... parts) {
    TreeSet<Double> levels = new TreeSet<>();
    for (NetPressure part : parts) {
      for (NetSegment s : part.segments()) {
        levels.add(s.topLevel());
        levels.add(s.bottomLevel());
      }
    }
    List<NetSegment> out = new ArrayList<>();
    double upper = Double.NaN;
    for (double lower : levels.descendingSet()) {
      if (Double.isNaN(upper)) {
        upper = lower;
      } else if (upper - lower > SAME_LEVEL) {
        double atTop = 0;
        double atBottom = 0;
        double middle = (upper + lower) / 2;
        for (NetPressure part : parts) {
          for (NetSegment s : part.segments()) {
            if (s.topLevel() > middle && s.bottomLevel() < middle) {
              atTop += s.at(upper);
              atBottom += s.at(lower);
            }
          }
        }
        out.add(new NetSegment(upper, lower, atTop, atBottom));
        upper = lower;
      }
    }
    return new NetPressure(out);
  }
}
