package pilefolio.model;

import java.util.Objects;
import pilefolio.findings.CellRef;
import pilefolio.units.Unit;

/**
 * A number the user gave, or a stated default taken for an empty cell.
 *
 * @param si value in coherent SI units (N, m, Pa, s, kg, rad; temperature in °C)
 * @param unit unit as entered
 * @param entered value in that unit, as entered
 * @param cell where it stands, or the empty cell it was assumed for
 * @param defaulted true if the cell was empty; documents list the value as an assumption
 * @param column name of the column or item
 */
public record Value(
    double si, Unit unit, double entered, CellRef cell, boolean defaulted, String column) {

  /** Checks the parts. */
  public Value {
    Objects.requireNonNull(unit);
    Objects.requireNonNull(cell);
    Objects.requireNonNull(column);
    if (!Double.isFinite(si)) {
      throw new IllegalArgumentException(column + " is not a finite number");
    }
  }

  /** A value that stands in a cell. */
  public static Value entered(double entered, Unit unit, CellRef cell, String column) {
    return new Value(unit.toSi(entered), unit, entered, cell, false, column);
  }

  /** A stated default taken because the cell is empty. */
  public static Value assumed(double entered, Unit unit, CellRef cell, String column) {
    return new Value(unit.toSi(entered), unit, entered, cell, true, column);
  }

  /**
   * The value in another unit.
   *
   * @throws IllegalArgumentException if the unit does not fit
   */
  public double in(Unit wanted) {
    if (!wanted.fits(unit)) {
      throw new IllegalArgumentException(column + " in " + unit + " cannot be had in " + wanted);
    }
    return wanted.equals(unit) ? entered : wanted.fromSi(si);
  }
}
