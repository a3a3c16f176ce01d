package pilefolio.trace;

import pilefolio.findings.CellRef;

/** Where a given value comes from; every number in a document names one. */
public sealed interface Source {

  /** The words that documents print beside the value. */
  String text();

  /**
   * A cell of the workbook.
   *
   * @param cell the cell
   * @param column name of its column
   * @param defaulted true if the cell is blank and the stated default was taken
   */
  record Cell(CellRef cell, String column, boolean defaulted) implements Source {
    @Override
    public String text() {
      return defaulted ? "default of " + column + " (" + cell.sheet() + ")" : cell.address();
    }
  }

  /**
   * A row of a published or project table.
   *
   * @param table the table
   * @param row the row
   */
  record TableRow(String table, String row) implements Source {
    @Override
    public String text() {
      return table + ", " + row;
    }
  }

  /**
   * A factor of the design basis.
   *
   * @param key key of the factor, as an override names it
   * @param reference where the value comes from
   */
  record Factor(String key, Reference reference) implements Source {
    @Override
    public String text() {
      return reference.margin().isEmpty() ? "design basis" : reference.margin();
    }
  }

  /**
   * A line of another calculation.
   *
   * @param checkId the check
   * @param title its title, as the page prints it
   * @param symbol the symbol there
   */
  record Line(String checkId, String title, String symbol) implements Source {
    @Override
    public String text() {
      return symbol + " of “" + title + "”";
    }
  }

  /**
   * A numerical method of the engine.
   *
   * @param name what the method does
   */
  record Method(String name) implements Source {
    @Override
    public String text() {
      return name;
    }
  }

  /**
   * A value that follows from the layout, such as a level difference or a count.
   *
   * @param how how it follows
   */
  record Layout(String how) implements Source {
    @Override
    public String text() {
      return how;
    }
  }
}
