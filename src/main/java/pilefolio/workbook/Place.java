package pilefolio.workbook;

import java.util.function.Consumer;
import pilefolio.findings.CellRef;
import pilefolio.findings.Finding;
import pilefolio.units.Unit;

/**
 * Where a cell is read: its address, the unit of its column and where findings go.
 *
 * @param at the cell
 * @param unit unit of the column; a plain number for columns without one
 * @param findings takes findings
 */
record Place(CellRef at, Unit unit, Consumer<Finding> findings) {
  void report(FindingKind kind, String found, String expected) {
    findings.accept(kind.at(at, found, expected));
  }
}
