package pilefolio.workbook;

import java.util.OptionalDouble;
import pilefolio.findings.CellRef;

/**
 * One input as it was read, for the record and the appendix.
 *
 * @param cell where it stands
 * @param subject the row it belongs to, such as the id of a wall run; empty for a form
 * @param name name of the column or item
 * @param text as entered, or the default
 * @param unit unit as entered; empty for texts and plain numbers
 * @param si coherent SI value of a number
 * @param defaulted true if the cell is empty and the text is the default
 */
public record InputEcho(
    CellRef cell,
    String subject,
    String name,
    String text,
    String unit,
    OptionalDouble si,
    boolean defaulted) {
  /** Name of the sheet. */
  public String sheet() {
    return cell.sheet();
  }
}
