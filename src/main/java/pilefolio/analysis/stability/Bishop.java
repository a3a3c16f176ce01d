package pilefolio.analysis.stability;

import java.util.List;
import java.util.OptionalDouble;

/**
 * The simplified method of Bishop (1955): moment equilibrium of the whole and vertical equilibrium
 * of each slice, without shear between slices.
 */
public final class Bishop {
  /**
   * Below this m_α the normal force at a steep exit loses its meaning (Whitman and Bailey 1967).
   */
  public static final double LEAST_M_ALPHA = 0.2;

  private static final int ITERATIONS = 200;
  private static final double CLOSE = 1e-12;

  private Bishop() {}

  /** m_α = cos α + sin α·tan φ/F. */
  public static double mAlpha(SlipSlice slice, double factor) {
    return Math.cos(slice.alphaRad())
        + Math.sin(slice.alphaRad()) * Math.tan(slice.phiRad()) / factor;
  }

  /**
   * Factor of safety of a circle.
   *
   * @param slices slices from exit to entry
   * @param holding moment of supports about the centre over the radius, kN/m
   * @return the factor; infinite if nothing drives a slide; empty if the method has no answer: no
   *     slices, no convergence, or m_α too small at a steep exit
   */
  public static OptionalDouble factor(List<SlipSlice> slices, double holding) {
    double driving = -holding;
    for (SlipSlice slice : slices) {
      driving += slice.driving();
    }
    if (slices.isEmpty()) {
      return OptionalDouble.empty();
    }
    if (!(driving > 0)) {
      return OptionalDouble.of(Double.POSITIVE_INFINITY);
    }
    int n = slices.size();
    double[] resistance = new double[n];
    double[] cos = new double[n];
    double[] sinTan = new double[n];
    for (int i = 0; i < n; i++) {
      SlipSlice slice = slices.get(i);
      resistance[i] = slice.resistance();
      cos[i] = Math.cos(slice.alphaRad());
      sinTan[i] = Math.sin(slice.alphaRad()) * Math.tan(slice.phiRad());
    }
    double factor = 1;
    for (int k = 0; k < ITERATIONS; k++) {
      double sum = 0;
      for (int i = 0; i < n; i++) {
        sum += resistance[i] / (cos[i] + sinTan[i] / factor);
      }
      double next = sum / driving;
      if (!(next > 0) || Double.isInfinite(next)) {
        return OptionalDouble.empty();
      }
      if (Math.abs(next - factor) <= CLOSE * next) {
        return steep(slices, next) ? OptionalDouble.empty() : OptionalDouble.of(next);
      }
      factor = next;
    }
    return OptionalDouble.empty();
  }

  private static boolean steep(List<SlipSlice> slices, double factor) {
    return slices.stream().anyMatch(s -> s.phiRad() > 0 && mAlpha(s, factor) < LEAST_M_ALPHA);
  }

  /**
   * Factor of the ordinary method of slices (Fellenius): forces between slices left out.
   *
   * @param slices slices from exit to entry
   * @param holding moment of supports about the centre over the radius, kN/m
   * @return the factor; empty without a drive
   */
  public static OptionalDouble ordinary(List<SlipSlice> slices, double holding) {
    double driving = -holding;
    double resisting = 0;
    for (SlipSlice s : slices) {
      double length = s.width() / Math.cos(s.alphaRad());
      double normal = s.vertical() * Math.cos(s.alphaRad()) - s.pore() * length;
      driving += s.driving();
      resisting += s.cohesion() * length + Math.max(0, normal) * Math.tan(s.phiRad());
    }
    return driving > 0 ? OptionalDouble.of(resisting / driving) : OptionalDouble.empty();
  }
}
