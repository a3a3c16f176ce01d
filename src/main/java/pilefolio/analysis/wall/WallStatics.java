package pilefolio.analysis.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * Shear and moment of a wall under net pressure and concentrated forces, exact: inside a stretch
 * shear is a parabola and moment a cubic.
 */
public final class WallStatics {
  private final NetPressure pressure;
  private final List<PointForce> forces;
  private final List<NetSegment> pieces = new ArrayList<>();
  private final double[] shearAtTop;
  private final double[] momentAtTop;
  private final List<Extreme> extremes = new ArrayList<>();

  /**
   * A largest or smallest moment, where shear passes through zero.
   *
   * @param level level, m
   * @param moment moment, kNm/m
   */
  public record Extreme(double level, double moment) {}

  /**
   * @param pressure net pressure from the top of the wall to its toe
   * @param forces concentrated forces, between top and toe
   */
  public WallStatics(NetPressure pressure, List<PointForce> forces) {
    this.pressure = pressure;
    this.forces = List.copyOf(forces);
    for (NetSegment s : pressure.segments()) {
      split(s);
    }
    int n = pieces.size();
    shearAtTop = new double[n + 1];
    momentAtTop = new double[n + 1];
    double v = n == 0 ? 0 : forcesAt(pieces.get(0).topLevel());
    double m = 0;
    for (int i = 0; i < n; i++) {
      NetSegment s = pieces.get(i);
      shearAtTop[i] = v;
      momentAtTop[i] = m;
      collectZeroShear(s, v, m);
      double x = s.height();
      m = moment(s, v, m, x);
      double vBottom = shear(s, v, x);
      v = vBottom + (i + 1 < n ? forcesAt(s.bottomLevel()) : 0);
      if (vBottom * v < 0) {
        extremes.add(new Extreme(s.bottomLevel(), m));
      }
    }
    shearAtTop[n] = v;
    momentAtTop[n] = m;
  }

  private void split(NetSegment s) {
    TreeSet<Double> cuts = new TreeSet<>();
    for (PointForce f : forces) {
      if (f.level() < s.topLevel() && f.level() > s.bottomLevel()) {
        cuts.add(f.level());
      }
    }
    double upper = s.topLevel();
    for (double cut : cuts.descendingSet()) {
      pieces.add(s.between(upper, cut));
      upper = cut;
    }
    pieces.add(s.between(upper, s.bottomLevel()));
  }

  private double forcesAt(double level) {
    double sum = 0;
    for (PointForce f : forces) {
      if (f.level() == level) {
        sum += f.force();
      }
    }
    return sum;
  }

  private static double slope(NetSegment s) {
    return s.height() == 0 ? 0 : (s.bottomPressure() - s.topPressure()) / s.height();
  }

  private static double shear(NetSegment s, double v, double x) {
    return v + s.topPressure() * x + slope(s) * x * x / 2;
  }

  private static double moment(NetSegment s, double v, double m, double x) {
    return m + v * x + s.topPressure() * x * x / 2 + slope(s) * x * x * x / 6;
  }

  private void collectZeroShear(NetSegment s, double v, double m) {
    double a = slope(s) / 2;
    double b = s.topPressure();
    double h = s.height();
    List<Double> roots = new ArrayList<>();
    if (Math.abs(a) * h * h < 1e-12 * (Math.abs(b) * h + Math.abs(v))) {
      if (b != 0) {
        roots.add(-v / b);
      }
    } else {
      double disc = b * b - 4 * a * v;
      if (disc >= 0) {
        // The sum form keeps digits where b² is much larger than 4·a·v.
        double q = -(b + Math.copySign(Math.sqrt(disc), b)) / 2;
        roots.add(q / a);
        if (q != 0) {
          roots.add(v / q);
        }
      }
    }
    roots.sort(null);
    for (double x : roots) {
      if (x > 0 && x < h) {
        extremes.add(new Extreme(s.topLevel() - x, moment(s, v, m, x)));
      }
    }
  }

  /** The net pressure. */
  public NetPressure pressure() {
    return pressure;
  }

  /** The concentrated forces. */
  public List<PointForce> forces() {
    return forces;
  }

  /** Shear just above a level, kN/m. */
  public double shearAt(double level) {
    for (int i = 0; i < pieces.size(); i++) {
      NetSegment s = pieces.get(i);
      if (level < s.topLevel() && level >= s.bottomLevel()) {
        return shear(s, shearAtTop[i], s.topLevel() - level);
      }
    }
    return 0;
  }

  /** Moment at a level, kNm/m. */
  public double momentAt(double level) {
    for (int i = 0; i < pieces.size(); i++) {
      NetSegment s = pieces.get(i);
      if (level <= s.topLevel() && level >= s.bottomLevel()) {
        return moment(s, shearAtTop[i], momentAtTop[i], s.topLevel() - level);
      }
    }
    return 0;
  }

  /** All moments where shear passes through zero, from the top down. */
  public List<Extreme> extremes() {
    return List.copyOf(extremes);
  }

  /** Largest moment with tension on the retained side, kNm/m; zero moment at the top if none. */
  public Extreme greatest() {
    Extreme best = new Extreme(topLevel(), 0);
    for (Extreme e : extremes) {
      if (e.moment() > best.moment()) {
        best = e;
      }
    }
    return best;
  }

  /** Largest moment with tension on the excavated side, as a negative number, kNm/m. */
  public Extreme least() {
    Extreme best = new Extreme(topLevel(), 0);
    for (Extreme e : extremes) {
      if (e.moment() < best.moment()) {
        best = e;
      }
    }
    return best;
  }

  /** The extreme with the largest absolute moment. */
  public Extreme governing() {
    return greatest().moment() >= -least().moment() ? greatest() : least();
  }

  /**
   * A shear force.
   *
   * @param level level, m
   * @param shear shear, kN/m
   */
  public record ShearValue(double level, double shear) {}

  /** Shear of the largest absolute value. */
  public ShearValue greatestShear() {
    ShearValue best = new ShearValue(topLevel(), 0);
    for (int i = 0; i < pieces.size(); i++) {
      NetSegment s = pieces.get(i);
      best = larger(best, s.topLevel(), shearAtTop[i]);
      best = larger(best, s.bottomLevel(), shear(s, shearAtTop[i], s.height()));
      double slope = slope(s);
      double x = slope == 0 ? -1 : -s.topPressure() / slope;
      if (x > 0 && x < s.height()) {
        best = larger(best, s.topLevel() - x, shear(s, shearAtTop[i], x));
      }
    }
    return best;
  }

  private static ShearValue larger(ShearValue best, double level, double shear) {
    return Math.abs(shear) > Math.abs(best.shear()) ? new ShearValue(level, shear) : best;
  }

  /** Level of the top, m. */
  public double topLevel() {
    return pressure.topLevel();
  }

  /** Level of the toe, m. */
  public double toeLevel() {
    return pressure.bottomLevel();
  }

  /** Sum of all horizontal forces, kN/m; zero in equilibrium. */
  public double forceResidual() {
    double sum = pressure.force();
    for (PointForce f : forces) {
      sum += f.force();
    }
    return sum;
  }

  /** Sum of all moments about the toe, kNm/m; zero in equilibrium. */
  public double momentResidual() {
    double sum = pressure.momentAbout(toeLevel());
    for (PointForce f : forces) {
      sum += f.force() * (f.level() - toeLevel());
    }
    return sum;
  }

  /**
   * EI times the offset of a level from the tangent at the toe, kNm³/m: the first moment of the
   * moment diagram between the toe and that level (moment-area theorem); positive toward the
   * excavation.
   */
  public double offsetFromToeTangent(double level) {
    double sum = 0;
    for (int i = 0; i < pieces.size(); i++) {
      NetSegment s = pieces.get(i);
      double top = Math.min(s.topLevel(), level);
      double h = top - s.bottomLevel();
      if (h <= 0) {
        continue;
      }
      double mid = s.bottomLevel() + h / 2;
      // Three-point Gauss quadrature is exact for the fourth-degree integrand.
      double g = h / 2 * Math.sqrt(0.6);
      sum +=
          h
              / 18
              * (5 * integrand(i, mid - g, level)
                  + 8 * integrand(i, mid, level)
                  + 5 * integrand(i, mid + g, level));
    }
    return sum;
  }

  private double integrand(int i, double at, double level) {
    NetSegment s = pieces.get(i);
    return moment(s, shearAtTop[i], momentAtTop[i], s.topLevel() - at) * (level - at);
  }
}
