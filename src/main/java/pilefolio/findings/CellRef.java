package pilefolio.findings;

/**
 * A place in a workbook.
 *
 * @param sheet name of the sheet
 * @param row row, counted from 1 as a spreadsheet shows it; 0 means the whole sheet
 * @param column column, counted from 1; 0 means the whole row or sheet
 */
public record CellRef(String sheet, int row, int column) implements Comparable<CellRef> {

  /** The whole sheet. */
  public static CellRef sheet(String sheet) {
    return new CellRef(sheet, 0, 0);
  }

  /** The address as a spreadsheet writes it, such as {@code Ground!D7}. */
  public String address() {
    if (row == 0) {
      return sheet;
    }
    return sheet + "!" + letters() + row;
  }

  private String letters() {
    StringBuilder text = new StringBuilder();
    for (int left = column; left > 0; left = (left - 1) / 26) {
      text.insert(0, (char) ('A' + (left - 1) % 26));
    }
    return text.toString();
  }

  @Override
  public int compareTo(CellRef other) {
    int bySheet = sheet.compareTo(other.sheet);
    if (bySheet != 0) {
      return bySheet;
    }
    return row != other.row
        ? Integer.compare(row, other.row)
        : Integer.compare(column, other.column);
  }

  @Override
  public String toString() {
    return address();
  }
}
