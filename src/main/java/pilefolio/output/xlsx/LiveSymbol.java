package pilefolio.output.xlsx;

import pilefolio.units.Unit;

/**
 * The cell of a symbol.
 *
 * @param address its absolute address
 * @param unit unit of the number in it
 * @param si the engine's coherent SI value
 * @param noise how far the last bits may make the live value part from it, coherent SI
 */
record LiveSymbol(String address, Unit unit, double si, double noise) {}
