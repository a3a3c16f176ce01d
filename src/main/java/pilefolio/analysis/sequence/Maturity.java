package pilefolio.analysis.sequence;

import java.util.List;

/**
 * Effect of temperature on the speed of hardening: how many hours at the reference temperature one
 * hour at another temperature is worth. Use needs a calibration for the mix.
 */
public sealed interface Maturity
    permits Maturity.EuropeanAge, Maturity.TemperatureTime, Maturity.ActivationEnergy {

  /**
   * Equivalent time per real time.
   *
   * @param temperature concrete temperature, °C
   * @return the factor; 1 at the reference temperature (0.998 for the European form)
   */
  double factor(double temperature);

  /**
   * One stretch of time at a steady temperature.
   *
   * @param hours length, h
   * @param temperature concrete temperature, °C
   */
  record Spell(double hours, double temperature) {}

  /**
   * Equivalent age after a history of temperatures.
   *
   * @param history stretches at a steady temperature
   * @return equivalent age, h
   */
  default double equivalentHours(List<Spell> history) {
    return history.stream().mapToDouble(s -> s.hours() * factor(s.temperature())).sum();
  }

  /**
   * Temperature-adjusted age of EN 1992-1-1, expression (B.10): exp(13.65 − 4000/(273 + T)), from
   * memory. The printed constants give 0.998 at 20 °C and are left so.
   */
  record EuropeanAge() implements Maturity {
    @Override
    public double factor(double temperature) {
      return Math.exp(13.65 - 4000 / (273 + temperature));
    }
  }

  /**
   * Temperature–time product: (T − T₀)/(T_r − T₀).
   *
   * @param datum temperature at which hardening stops, °C
   * @param reference reference temperature, °C, above the datum
   */
  record TemperatureTime(double datum, double reference) implements Maturity {
    /**
     * Checks the temperatures.
     *
     * @throws IllegalArgumentException if the reference is not above the datum
     */
    public TemperatureTime {
      if (!(reference > datum)) {
        throw new IllegalArgumentException("the reference must be above the datum temperature");
      }
    }

    /** Concrete at or below the datum does not harden; the method itself sets the zero. */
    @Override
    public double factor(double temperature) {
      return Math.max(0, temperature - datum) / (reference - datum);
    }

    /**
     * The product itself.
     *
     * @param history stretches at a steady temperature
     * @return °C·h
     */
    public double product(List<Spell> history) {
      return equivalentHours(history) * (reference - datum);
    }
  }

  /**
   * Equivalent age by activation energy: exp(−Q·(1/T − 1/T_r)) with absolute temperatures.
   *
   * @param q activation energy over the gas constant, K; about 4000 to 5000
   * @param reference reference temperature, °C
   */
  record ActivationEnergy(double q, double reference) implements Maturity {
    private static final double ZERO_CELSIUS = 273.15;

    @Override
    public double factor(double temperature) {
      return Math.exp(-q * (1 / (ZERO_CELSIUS + temperature) - 1 / (ZERO_CELSIUS + reference)));
    }
  }
}
