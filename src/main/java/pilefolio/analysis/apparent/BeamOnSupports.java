package pilefolio.analysis.apparent;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pilefolio.analysis.earth.OutsideRange;
import pilefolio.analysis.wall.NetPressure;
import pilefolio.analysis.wall.NetSegment;
import pilefolio.analysis.wall.PointForce;
import pilefolio.analysis.wall.WallStatics;

/**
 * A wall under a pressure, held at several levels.
 *
 * @param load pressure from the top of the wall down
 * @param supports support levels from the top down, m; two or more, or one with a base reaction
 * @param base what holds the wall below the lowest support
 */
public record BeamOnSupports(NetPressure load, List<Double> supports, Base base) {
  private static final double SPAN_SHARE = 0.1;

  /**
   * @throws OutsideRange if the beam cannot stand
   */
  public BeamOnSupports {
    supports = List.copyOf(supports);
    SupportLevels.require(supports, load.topLevel(), load.bottomLevel());
    if (base instanceof Base.Reaction r && r.level() > load.bottomLevel() + 1e-9) {
      throw new OutsideRange("the base reaction must not act above the bottom of the pressure");
    }
    if (supports.size() == 1 && base instanceof Base.Overhang) {
      throw new OutsideRange("a single support needs a reaction at the base");
    }
  }

  /** Solves the beam. */
  public SupportReactions solve(Idealisation idealisation) {
    return switch (idealisation) {
      case HINGE -> fromMoments(idealisation, hingeMoments());
      case TRIBUTARY -> tributary();
      case CONTINUOUS -> fromMoments(idealisation, continuousMoments());
    };
  }

  /** Supports and, if there is one, the base reaction, from the top down, m. */
  public List<Double> points() {
    List<Double> points = new ArrayList<>(supports);
    if (base instanceof Base.Reaction r) {
      points.add(r.level());
    }
    return points;
  }

  /** The load, carried on without pressure down to the base reaction. */
  public NetPressure wholeLoad() {
    double end = points().get(points().size() - 1);
    return end < load.bottomLevel() - 1e-9
        ? load.followedBy(new NetPressure(List.of(new NetSegment(load.bottomLevel(), end, 0, 0))))
        : load;
  }

  private double overhangTop() {
    return load.above(supports.get(0)).momentAbout(supports.get(0));
  }

  private double overhangBottom() {
    List<Double> points = points();
    double last = points.get(points.size() - 1);
    // Seen from the last support the load below turns the other way, with the same tension side.
    return -load.between(last, Double.NEGATIVE_INFINITY).momentAbout(last);
  }

  /** Moments at the points: hinges at all but the ends. */
  private double[] hingeMoments() {
    double[] m = new double[points().size()];
    m[0] = overhangTop();
    m[m.length - 1] += base instanceof Base.Overhang ? overhangBottom() : 0;
    return m;
  }

  /**
   * Moments at the points of the continuous beam: rotations of the points from a tridiagonal
   * stiffness matrix, end moments from slope and deflection. Constant stiffness cancels.
   */
  private double[] continuousMoments() {
    List<Double> points = points();
    int n = points.size();
    double[] diagonal = new double[n];
    double[] beside = new double[n];
    double[] right = new double[n];
    double[] fixedTop = new double[n];
    double[] fixedBottom = new double[n];
    // Moments on the ends of a span are positive where they turn as the top overhang does.
    right[0] += overhangTop();
    if (base instanceof Base.Overhang) {
      right[n - 1] -= overhangBottom();
    }
    for (int i = 0; i + 1 < n; i++) {
      double upper = points.get(i);
      double lower = points.get(i + 1);
      double k = 1 / (upper - lower);
      fixedTop[i] = fixedEnd(upper, lower, true);
      fixedBottom[i] = fixedEnd(upper, lower, false);
      diagonal[i] += 4 * k;
      diagonal[i + 1] += 4 * k;
      beside[i] = 2 * k;
      right[i] -= fixedTop[i];
      right[i + 1] += fixedBottom[i];
    }
    double[] rotation = tridiagonal(diagonal, beside, right);
    double[] m = new double[n];
    m[0] = overhangTop();
    for (int i = 0; i + 1 < n; i++) {
      double k = 1 / (points.get(i) - points.get(i + 1));
      m[i + 1] = fixedBottom[i] - (2 * rotation[i] + 4 * rotation[i + 1]) * k;
    }
    m[n - 1] = base instanceof Base.Overhang ? overhangBottom() : 0;
    return m;
  }

  /** Moment at a clamped end of a span under its load, kNm/m; exact for linear pressure. */
  public double fixedEnd(double upper, double lower, boolean top) {
    double length = upper - lower;
    double sum = 0;
    for (NetSegment s : load.between(upper, lower).segments()) {
      double mid = (s.topLevel() + s.bottomLevel()) / 2;
      double g = s.height() / 2 * Math.sqrt(0.6);
      double[] at = {mid + g, mid, mid - g};
      double[] weight = {5, 8, 5};
      for (int j = 0; j < at.length; j++) {
        double a = upper - at[j];
        double b = at[j] - lower;
        double share = top ? a * b * b : a * a * b;
        sum += weight[j] / 18 * s.height() * s.at(at[j]) * share / (length * length);
      }
    }
    return sum;
  }

  private static double[] tridiagonal(double[] diagonal, double[] beside, double[] right) {
    int n = diagonal.length;
    double[] d = diagonal.clone();
    double[] r = right.clone();
    for (int i = 1; i < n; i++) {
      double factor = beside[i - 1] / d[i - 1];
      d[i] -= factor * beside[i - 1];
      r[i] -= factor * r[i - 1];
    }
    double[] x = new double[n];
    for (int i = n - 1; i >= 0; i--) {
      x[i] = (r[i] - (i + 1 < n ? beside[i] * x[i + 1] : 0)) / d[i];
    }
    return x;
  }

  /** Reactions from the moments at the points, span by span. */
  private SupportReactions fromMoments(Idealisation idealisation, double[] moments) {
    List<Double> points = points();
    int n = points.size();
    double[] reaction = new double[n];
    reaction[0] += load.above(points.get(0)).force();
    if (base instanceof Base.Overhang) {
      reaction[n - 1] += load.between(points.get(n - 1), Double.NEGATIVE_INFINITY).force();
    }
    for (int i = 0; i + 1 < n; i++) {
      double upper = points.get(i);
      double lower = points.get(i + 1);
      NetPressure span = load.between(upper, lower);
      double atTop = (span.momentAbout(lower) + moments[i] - moments[i + 1]) / (upper - lower);
      reaction[i] += atTop;
      reaction[i + 1] += span.force() - atTop;
    }
    List<PointForce> forces = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      boolean ofBase = i >= supports.size();
      forces.add(new PointForce(ofBase ? "base" : "support", points.get(i), -reaction[i]));
    }
    WallStatics statics = new WallStatics(wholeLoad(), forces);
    List<Double> spans = new ArrayList<>();
    for (int i = 0; i + 1 < n; i++) {
      spans.add(inSpan(statics, points.get(i), points.get(i + 1)));
    }
    double greatest = Math.abs(statics.governing().moment());
    for (double m : moments) {
      greatest = Math.max(greatest, Math.abs(m));
    }
    return new SupportReactions(
        idealisation,
        supports,
        list(reaction, supports.size()),
        base instanceof Base.Reaction ? OptionalDouble.of(reaction[n - 1]) : OptionalDouble.empty(),
        list(moments, supports.size()),
        spans,
        greatest,
        Math.abs(statics.greatestShear().shear()),
        Optional.of(statics));
  }

  private static double inSpan(WallStatics statics, double upper, double lower) {
    double best = 0;
    for (WallStatics.Extreme e : statics.extremes()) {
      if (e.level() < upper - 1e-9
          && e.level() > lower + 1e-9
          && Math.abs(e.moment()) > Math.abs(best)) {
        best = e.moment();
      }
    }
    return best;
  }

  /**
   * Tributary areas. The moment of the overhang is that of a cantilever, that of each span a tenth
   * of its greatest pressure times its length squared, at supports and within spans alike.
   */
  private SupportReactions tributary() {
    List<Double> points = points();
    int n = points.size();
    double[] reaction = new double[n];
    double shear = 0;
    double upper = Double.POSITIVE_INFINITY;
    for (int i = 0; i < n; i++) {
      double lower = i + 1 < n ? (points.get(i) + points.get(i + 1)) / 2 : Double.NEGATIVE_INFINITY;
      double above = force(upper, points.get(i));
      double below = force(points.get(i), lower);
      reaction[i] = above + below;
      shear = Math.max(shear, Math.max(Math.abs(above), Math.abs(below)));
      upper = lower;
    }
    List<Double> spans = new ArrayList<>();
    double greatest = Math.abs(overhangTop());
    for (int i = 0; i + 1 < n; i++) {
      double length = points.get(i) - points.get(i + 1);
      double moment =
          SPAN_SHARE * greatestPressure(points.get(i), points.get(i + 1)) * length * length;
      spans.add(-moment);
      greatest = Math.max(greatest, moment);
    }
    List<Double> supportMoments = new ArrayList<>();
    for (int i = 0; i < supports.size(); i++) {
      double beside = i > 0 ? -spans.get(i - 1) : overhangTop();
      double next = i > 0 && i < spans.size() ? -spans.get(i) : 0;
      supportMoments.add(Math.max(beside, next));
    }
    if (base instanceof Base.Overhang) {
      int last = supports.size() - 1;
      supportMoments.set(last, Math.max(supportMoments.get(last), overhangBottom()));
      greatest = Math.max(greatest, Math.abs(overhangBottom()));
    }
    return new SupportReactions(
        Idealisation.TRIBUTARY,
        supports,
        list(reaction, supports.size()),
        base instanceof Base.Reaction ? OptionalDouble.of(reaction[n - 1]) : OptionalDouble.empty(),
        supportMoments,
        spans,
        greatest,
        shear,
        Optional.empty());
  }

  private double force(double upper, double lower) {
    return load.between(upper, lower).force();
  }

  /** Greatest pressure between two levels, kPa. */
  public double greatestPressure(double upper, double lower) {
    double greatest = 0;
    for (NetSegment s : load.between(upper, lower).segments()) {
      greatest = Math.max(greatest, Math.max(s.topPressure(), s.bottomPressure()));
    }
    return greatest;
  }

  private static List<Double> list(double[] values, int count) {
    List<Double> out = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      out.add(values[i]);
    }
    return out;
  }
}
