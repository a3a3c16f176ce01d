package pilefolio.model;

import pilefolio.findings.CellRef;

/**
 * A default taken for an empty cell.
 *
 * @param cell the empty cell
 * @param column name of the column or item
 * @param subject the row it belongs to, such as the id of a wall run; empty for a form
 * @param text the default with its unit, as printed
 */
public record Assumption(CellRef cell, String column, String subject, String text) {}
