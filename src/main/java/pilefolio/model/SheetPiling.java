package pilefolio.model;

import java.util.Optional;
import pilefolio.findings.CellRef;

/**
 * Sheet piles of a run.
 *
 * @param at row
 * @param section name of the section
 * @param yieldStrength yield strength, Pa
 * @param toe toe level, m; sized if empty
 * @param width width of one sheet, m
 * @param sectionModulus elastic, per length of wall, m³/m
 * @param secondMoment per length of wall, m⁴/m
 * @param area per length of wall, m²/m
 * @param shape what else checks need
 */
public record SheetPiling(
    CellRef at,
    String section,
    Value yieldStrength,
    Optional<Value> toe,
    Value width,
    Value sectionModulus,
    Value secondMoment,
    Value area,
    SheetShape shape) {

  /** The same sheet piles with another toe level. */
  public SheetPiling withToe(Value level) {
    return new SheetPiling(
        at,
        section,
        yieldStrength,
        Optional.of(level),
        width,
        sectionModulus,
        secondMoment,
        area,
        shape);
  }
}
