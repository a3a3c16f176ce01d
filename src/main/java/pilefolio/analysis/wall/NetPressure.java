package pilefolio.analysis.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import pilefolio.analysis.earth.PressureDiagram;

/**
 * Net pressure on the wall from its top down, without gaps; positive pushes toward the excavation.
 *
 * @param segments stretches from the top down
 */
public record NetPressure(List<NetSegment> segments) {

  public NetPressure {
    segments = List.copyOf(segments);
  }

  /** Pressure behind less pressure in front. */
  public static NetPressure of(PressureDiagram behind, PressureDiagram front) {
    TreeSet<Double> levels = new TreeSet<>(behind.breaks());
    levels.addAll(front.breaks());
    List<NetSegment> out = new ArrayList<>();
    Double upper = null;
    for (double lower : levels.descendingSet()) {
      // Breaks from the two sides that differ by rounding only are one break.
      if (upper != null && upper - lower > 1e-9) {
        out.add(
            new NetSegment(
                upper,
                lower,
                pressure(behind, upper, lower, upper) - pressure(front, upper, lower, upper),
                pressure(behind, upper, lower, lower) - pressure(front, upper, lower, lower)));
        upper = lower;
      } else if (upper == null) {
        upper = lower;
      }
    }
    return new NetPressure(out);
  }

  private static double pressure(PressureDiagram d, double upper, double lower, double level) {
    return d.holding(upper, lower).map(s -> s.pressureAt(level)).orElse(0.0);
  }

  /** Level of the top, m. */
  public double topLevel() {
    return segments.get(0).topLevel();
  }

  /** Level of the bottom, m. */
  public double bottomLevel() {
    return segments.get(segments.size() - 1).bottomLevel();
  }

  /** The part between two levels. */
  public NetPressure between(double upper, double lower) {
    List<NetSegment> out = new ArrayList<>();
    for (NetSegment s : segments) {
      double top = Math.min(upper, s.topLevel());
      double bottom = Math.max(lower, s.bottomLevel());
      if (top > bottom) {
        out.add(s.between(top, bottom));
      }
    }
    return new NetPressure(out);
  }

  /** The part above a level. */
  public NetPressure above(double level) {
    return between(Double.POSITIVE_INFINITY, level);
  }

  /** This pressure with another below it. */
  public NetPressure followedBy(NetPressure lower) {
    List<NetSegment> out = new ArrayList<>(segments);
    out.addAll(lower.segments);
    return new NetPressure(out);
  }

  /** Resultant of the whole, kN/m. */
  public double force() {
    double sum = 0;
    for (NetSegment s : segments) {
      sum += s.force();
    }
    return sum;
  }

  /** Moment of the whole about a level, kNm/m; positive for forces above it. */
  public double momentAbout(double level) {
    double sum = 0;
    for (NetSegment s : segments) {
      sum += s.momentAbout(level);
    }
    return sum;
  }

  /** Pressure just below a level, kPa; zero outside. */
  public double justBelow(double level) {
    for (NetSegment s : segments) {
      if (level <= s.topLevel() && level > s.bottomLevel()) {
        return s.at(level);
      }
    }
    return 0;
  }

  /** Pressure just above a level, kPa; zero outside. */
  public double justAbove(double level) {
    for (NetSegment s : segments) {
      if (level < s.topLevel() && level >= s.bottomLevel()) {
        return s.at(level);
      }
    }
    return 0;
  }
}
