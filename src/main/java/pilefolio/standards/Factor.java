package pilefolio.standards;

import java.util.Map;
import java.util.Objects;
import pilefolio.trace.Reference;

/**
 * One partial factor, safety factor or rule value of a design basis.
 *
 * @param key stable name, such as {@code ground.friction}
 * @param symbol as printed, such as {@code γ_φ}
 * @param meaning in words
 * @param unit unit of the value; empty for a pure number
 * @param values value by combination, or a single one under {@link #ALL}
 * @param low least value a user may enter
 * @param high greatest value a user may enter
 * @param reference where the value comes from
 */
public record Factor(
    String key,
    String symbol,
    String meaning,
    String unit,
    Map<String, Double> values,
    double low,
    double high,
    Reference reference) {

  /** Stands for every combination. */
  public static final String ALL = "all";

  /** Checks that every value lies in the permitted range. */
  public Factor {
    Objects.requireNonNull(symbol);
    Objects.requireNonNull(meaning);
    Objects.requireNonNull(unit);
    Objects.requireNonNull(reference);
    values = Map.copyOf(values);
    if (values.isEmpty() || (values.containsKey(ALL) && values.size() > 1)) {
      throw new IllegalArgumentException(key + ": one value for all, or one a combination");
    }
    for (double value : values.values()) {
      if (!(value >= low && value <= high)) {
        throw new IllegalArgumentException(
            key + ": " + value + " is outside " + low + " to " + high);
      }
    }
  }

  /**
   * The value in a combination.
   *
   * @throws IllegalArgumentException if the factor has no value there
   */
  public double in(String combination) {
    Double value = values.getOrDefault(combination, values.get(ALL));
    if (value == null) {
      throw new IllegalArgumentException(key + " has no value in " + combination);
    }
    return value;
  }

  /** True if the value is the same in every combination. */
  public boolean isUniform() {
    return values.values().stream().distinct().count() == 1;
  }
}
