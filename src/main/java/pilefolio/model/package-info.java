/**
 * What the user described, as immutable records in the words of the trade.
 *
 * <p>Nothing is computed here but plain geometry of the setting out. Every number is a {@link
 * pilefolio.model.Value}: the coherent SI value (N, m, Pa, s, kg, °C, rad) together with the unit
 * and the cell in which it was entered; {@code value.in(Units.KPA)} gives it in a unit. Levels are
 * elevations, positive upwards, in one datum for the whole job; depths never occur. Rows keep the
 * cell they start in ({@code at}), so that a finding about them can point there. Rows name each
 * other by id; {@link pilefolio.model.Submission} finds them.
 */
package pilefolio.model;
