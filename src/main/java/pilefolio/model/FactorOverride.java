package pilefolio.model;

import pilefolio.findings.CellRef;

/**
 * A factor of the design basis set by the user.
 *
 * @param at the first cell of the row
 * @param factor key of the factor in the design basis
 * @param value the factor, a pure number
 * @param reason why, as printed in the design basis chapter
 */
public record FactorOverride(CellRef at, String factor, Value value, String reason) {}
