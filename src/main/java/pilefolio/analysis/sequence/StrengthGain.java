package pilefolio.analysis.sequence;

import java.util.List;

/**
 * Growth of concrete strength with age, relative to the strength at 28 days. Ages are equivalent
 * days at the reference temperature of the model; none of the models is normalised silently.
 */
public sealed interface StrengthGain
    permits StrengthGain.EuropeanGain, StrengthGain.AmericanGain, StrengthGain.MeasuredGain {

  /**
   * Strength at an age over the strength at 28 days.
   *
   * @param age equivalent age, days, zero or more
   * @return the ratio; not a number outside the range of a measured curve
   */
  double at(double age);

  /**
   * Age at which a ratio is reached.
   *
   * @param ratio strength over the strength at 28 days, zero or more
   * @return the equivalent age, days; infinite if the ratio is never reached; not a number outside
   *     the range of a measured curve
   */
  double ageOf(double ratio);

  /**
   * Growth by EN 1992-1-1 cl. 3.1.2: β = exp(s·(1 − √(28/t))).
   *
   * @param s coefficient of the cement: 0.20 (class R), 0.25 (N), 0.38 (S); above zero
   */
  record EuropeanGain(double s) implements StrengthGain {
    /**
     * Checks the coefficient.
     *
     * @throws IllegalArgumentException if it is not above zero
     */
    public EuropeanGain {
      requireAboveZero(s, "s");
    }

    @Override
    public double at(double age) {
      return age <= 0 ? 0 : Math.exp(s * (1 - Math.sqrt(28 / age)));
    }

    @Override
    public double ageOf(double ratio) {
      if (ratio <= 0) {
        return 0;
      }
      double root = 1 - Math.log(ratio) / s;
      return root <= 0 ? Double.POSITIVE_INFINITY : 28 / (root * root);
    }
  }

  /**
   * Growth by ACI 209R: t/(a + b·t). The constants are from memory: a 4.0, b 0.85 (type I, moist),
   * 2.3, 0.92 (type III, moist), 1.0, 0.95 (type I, steam), 0.70, 0.98 (type III, steam).
   *
   * @param a constant, days, above zero
   * @param b constant, above zero
   */
  record AmericanGain(double a, double b) implements StrengthGain {
    /**
     * Checks the constants.
     *
     * @throws IllegalArgumentException if one is not above zero
     */
    public AmericanGain {
      requireAboveZero(a, "a");
      requireAboveZero(b, "b");
    }

    @Override
    public double at(double age) {
      return age <= 0 ? 0 : age / (a + b * age);
    }

    @Override
    public double ageOf(double ratio) {
      if (ratio <= 0) {
        return 0;
      }
      return b * ratio >= 1 ? Double.POSITIVE_INFINITY : a * ratio / (1 - b * ratio);
    }
  }

  /**
   * Growth measured on a trial mix, straight lines between the results from zero at zero age. Not
   * extended beyond the last result.
   *
   * @param ages equivalent ages, days, rising and above zero
   * @param ratios strength over the strength at 28 days, never falling
   */
  record MeasuredGain(List<Double> ages, List<Double> ratios) implements StrengthGain {
    /**
     * Checks that the results rise.
     *
     * @throws IllegalArgumentException if the lists differ in length, are empty or do not rise
     */
    public MeasuredGain {
      ages = List.copyOf(ages);
      ratios = List.copyOf(ratios);
      if (ages.isEmpty() || ages.size() != ratios.size()) {
        throw new IllegalArgumentException("needs one ratio for each age");
      }
      double lastAge = 0;
      double lastRatio = 0;
      for (int i = 0; i < ages.size(); i++) {
        if (!(ages.get(i) > lastAge) || !(ratios.get(i) >= lastRatio)) {
          throw new IllegalArgumentException("trial results must rise with age");
        }
        lastAge = ages.get(i);
        lastRatio = ratios.get(i);
      }
    }

    @Override
    public double at(double age) {
      return between(ages, ratios, age);
    }

    @Override
    public double ageOf(double ratio) {
      return between(ratios, ages, ratio);
    }

    private static double between(List<Double> from, List<Double> to, double value) {
      if (value <= 0) {
        return 0;
      }
      double lastFrom = 0;
      double lastTo = 0;
      for (int i = 0; i < from.size(); i++) {
        double nextFrom = from.get(i);
        if (value <= nextFrom && nextFrom > lastFrom) {
          return lastTo + (to.get(i) - lastTo) * (value - lastFrom) / (nextFrom - lastFrom);
        }
        lastFrom = nextFrom;
        lastTo = to.get(i);
      }
      return Double.NaN;
    }
  }

  private static void requireAboveZero(double value, String name) {
    if (!(value > 0)) {
      throw new IllegalArgumentException(name + " must be above zero: " + value);
    }
  }
}
