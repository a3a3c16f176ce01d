package pilefolio.output.json;

import java.util.List;
import pilefolio.trace.Condition.Sign;
import pilefolio.units.Unit;

/**
 * One line of a check in the record. {@code formula} with the values of its names, and {@code
 * substituted} as it stands, give {@code si} in any general expression parser.
 *
 * @param kind given, found, line, choice, cell, total or requirement
 * @param symbol plain name, used once in the check; formulas of the check refer to it
 * @param printed the symbol as documents print it; empty for a requirement
 * @param meaning what it is
 * @param sheet title of the calculation sheet
 * @param row label of the table row, or empty
 * @param formula the formula with names
 * @param substituted the formula with coherent SI numbers
 * @param si coherent SI value
 * @param unit unit of the documents
 * @param source where it comes from
 * @param condition for a choice, the condition that held, with names; empty otherwise
 * @param sides for a requirement, both sides; otherwise empty
 */
record RecordLine(
    String kind,
    String symbol,
    String printed,
    String meaning,
    String sheet,
    String row,
    String formula,
    String substituted,
    double si,
    Unit unit,
    String source,
    String condition,
    List<Side> sides) {

  /**
   * A side of a requirement.
   *
   * @param name {@code left} or {@code right}
   * @param formula the side with names
   * @param substituted the side with coherent SI numbers
   * @param si coherent SI value
   * @param sign the sign that must hold between left and right
   * @param satisfied whether it holds
   */
  record Side(
      String name, String formula, String substituted, double si, Sign sign, boolean satisfied) {}
}
