package pilefolio.submittal;

import java.util.OptionalDouble;
import pilefolio.findings.CellRef;

/**
 * One cell of the workbook, as the input echo and the record list it.
 *
 * @param cell where it stands
 * @param name column or item, with the row it belongs to
 * @param text as entered
 * @param unit unit as entered, or empty
 * @param si coherent SI value of a number
 */
public record InputLine(CellRef cell, String name, String text, String unit, OptionalDouble si) {}
