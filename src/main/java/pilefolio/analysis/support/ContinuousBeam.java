package pilefolio.analysis.support;

import java.util.ArrayList;
import java.util.List;

/**
 * A beam of one stiffness over rigid supports, under a uniform load: a waler between its struts or
 * anchors. Solved by the equation of three moments, which is exact for it.
 *
 * @param spans distances of neighbouring supports, m; at least one
 * @param overhang length beyond the first and beyond the last support, m; 0 if it ends there
 * @param load uniform load, kN/m
 */
public record ContinuousBeam(List<Double> spans, double overhang, double load) {

  /** Checks that there is something to span. */
  public ContinuousBeam {
    spans = List.copyOf(spans);
    if (spans.isEmpty() || spans.stream().anyMatch(s -> !(s > 0)) || !(overhang >= 0)) {
      throw new IllegalArgumentException("spans must be positive and overhangs not negative");
    }
  }

  /** Equal spans. */
  public static ContinuousBeam equal(int count, double span, double overhang, double load) {
    return new ContinuousBeam(java.util.Collections.nCopies(count, span), overhang, load);
  }

  /**
   * Hogging moments over the supports from the first to the last, kN·m.
   *
   * <p>At each inner support {@code M_l·L_l + 2·M·(L_l + L_r) + M_r·L_r = w·(L_l³ + L_r³)/4}.
   */
  public List<Double> supportMoments() {
    int n = spans.size();
    double end = load * overhang * overhang / 2;
    double[] moment = new double[n + 1];
    moment[0] = end;
    moment[n] = end;
    double[] upper = new double[n + 1];
    double[] right = new double[n + 1];
    right[0] = end;
    for (int i = 1; i < n; i++) {
      double left = spans.get(i - 1);
      double next = spans.get(i);
      double free = load * (left * left * left + next * next * next) / 4;
      double pivot = 2 * (left + next) - left * upper[i - 1];
      upper[i] = next / pivot;
      right[i] = (free - left * right[i - 1]) / pivot;
    }
    for (int i = n - 1; i > 0; i--) {
      moment[i] = right[i] - upper[i] * moment[i + 1];
    }
    List<Double> all = new ArrayList<>();
    for (double m : moment) {
      all.add(m);
    }
    return List.copyOf(all);
  }

  /** Forces of the supports from the first to the last, kN. */
  public List<Double> reactions() {
    List<Double> moments = supportMoments();
    double[] force = new double[spans.size() + 1];
    force[0] = load * overhang;
    force[spans.size()] = load * overhang;
    for (int i = 0; i < spans.size(); i++) {
      double span = spans.get(i);
      double tilt = (moments.get(i) - moments.get(i + 1)) / span;
      force[i] += load * span / 2 + tilt;
      force[i + 1] += load * span / 2 - tilt;
    }
    List<Double> all = new ArrayList<>();
    for (double f : force) {
      all.add(f);
    }
    return List.copyOf(all);
  }
}
