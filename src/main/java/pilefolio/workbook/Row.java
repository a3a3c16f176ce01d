package pilefolio.workbook;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import pilefolio.findings.CellRef;
import pilefolio.model.Value;

/**
 * One row of a table, or a whole form, read by its columns.
 *
 * <p>{@link #find} gives what was entered, {@link #effective} the default in its place, {@link
 * #get} the same and notes the default as taken.
 */
final class Row {
  /** A default that was taken for an empty cell. */
  record Taken(Row row, Column<?> column, CellRef cell, Object value) {}

  private final SheetSpec spec;
  private final CellRef at;
  private final Map<Column<?>, Object> values = new HashMap<>();
  private final Map<Column<?>, CellRef> places = new HashMap<>();
  private final Consumer<Taken> defaults;

  Row(SheetSpec spec, CellRef at, Consumer<Taken> defaults) {
    this.spec = spec;
    this.at = at;
    this.defaults = defaults;
  }

  void place(Column<?> column, CellRef cell) {
    places.put(column, cell);
  }

  void value(Column<?> column, Object value) {
    values.put(column, value);
  }

  SheetSpec spec() {
    return spec;
  }

  CellRef at() {
    return at;
  }

  /** The cell of a column, or the row if the column is not there. */
  CellRef place(Column<?> column) {
    return places.getOrDefault(column, new CellRef(at.sheet(), at.row(), 0));
  }

  /** True if nothing was entered. */
  boolean isEmpty() {
    return values.isEmpty();
  }

  /** What was entered. */
  @SuppressWarnings("unchecked")
  <T> Optional<T> find(Column<T> column) {
    // Only the column itself puts values under its name.
    return Optional.ofNullable((T) values.get(column));
  }

  /** What was entered, or the default. */
  <T> Optional<T> effective(Column<T> column) {
    Optional<T> entered = find(column);
    return entered.isPresent() ? entered : column.standard(place(column));
  }

  /**
   * The value, or the default where an empty cell only says that there is nothing special, which
   * needs no line among the assumptions.
   */
  <T> T quiet(Column<T> column) {
    return effective(column).orElseThrow();
  }

  /** What was entered, or the default, which is noted as taken. */
  <T> T get(Column<T> column) {
    Optional<T> entered = find(column);
    if (entered.isPresent()) {
      return entered.get();
    }
    T standard = column.standard(place(column)).orElseThrow();
    defaults.accept(new Taken(this, column, place(column), standard));
    return standard;
  }

  String textOr(TextColumn column) {
    return find(column).orElse("");
  }

  /** What was entered, or zero. */
  Value orZero(NumberColumn column) {
    return find(column)
        .orElseGet(() -> Value.assumed(0, column.unit(), place(column), column.name()));
  }

  /** The number in coherent SI units, entered or by default. */
  Optional<Double> si(NumberColumn column) {
    return effective(column).map(Value::si);
  }

  /** What the row is about: the text of its first column; an empty text for a form. */
  String subject() {
    if (spec.isForm()) {
      return "";
    }
    Object first = values.get(spec.columns().get(0));
    return first == null ? "" : first.toString();
  }
}
