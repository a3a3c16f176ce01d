package pilefolio.units;

import java.util.Objects;

/**
 * A unit of measurement: its symbol, its dimension and how to reach the coherent SI unit.
 *
 * <p>Coherent SI value = entered value × factor + offset. Only temperatures have an offset; their
 * coherent unit is the degree Celsius.
 *
 * @param symbol as printed, such as {@code kN/m³}
 * @param dimension physical dimension
 * @param factor coherent SI units in one of this unit; positive
 * @param offset coherent SI value of zero in this unit
 */
public record Unit(String symbol, Dimension dimension, double factor, double offset) {

  /** Checks the parts. */
  public Unit {
    Objects.requireNonNull(symbol);
    Objects.requireNonNull(dimension);
    if (!(factor > 0)) {
      throw new IllegalArgumentException("unit factor must be positive: " + symbol);
    }
  }

  /** A unit whose zero is the zero of the SI unit. */
  public static Unit of(String symbol, Dimension dimension, double factor) {
    return new Unit(symbol, dimension, factor, 0);
  }

  /** Converts a value in this unit to coherent SI. */
  public double toSi(double value) {
    return value * factor + offset;
  }

  /** Converts a coherent SI value to this unit. */
  public double fromSi(double si) {
    return (si - offset) / factor;
  }

  /** True if values can be converted between the two units. */
  public boolean fits(Unit other) {
    return dimension.equals(other.dimension);
  }

  @Override
  public String toString() {
    return symbol;
  }
}
