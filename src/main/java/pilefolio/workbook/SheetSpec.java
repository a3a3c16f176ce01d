package pilefolio.workbook;

import java.util.List;

/**
 * One sheet of the workbook.
 *
 * @param name name on its tab
 * @param shape table or form
 * @param required true if a workbook without it, or with no rows in it, cannot be used
 * @param purpose what it is for, in one sentence
 * @param columns columns of the table or items of the form, in their order
 */
public record SheetSpec(
    String name, Shape shape, boolean required, String purpose, List<Column<?>> columns) {

  /** How a sheet is laid out. */
  public enum Shape {
    /** Names in a head row, units below, one row a thing. */
    TABLE,
    /** Names in the first column, answers in the second, units in the third. */
    FORM
  }

  /** Copies the list. */
  public SheetSpec {
    columns = List.copyOf(columns);
  }

  static SheetSpec table(String name, boolean required, String purpose, Column<?>... columns) {
    return new SheetSpec(name, Shape.TABLE, required, purpose, List.of(columns));
  }

  static SheetSpec form(String name, boolean required, String purpose, Column<?>... columns) {
    return new SheetSpec(name, Shape.FORM, required, purpose, List.of(columns));
  }

  /** True for a form. */
  public boolean isForm() {
    return shape == Shape.FORM;
  }
}
