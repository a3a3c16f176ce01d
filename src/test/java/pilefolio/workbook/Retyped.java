package pilefolio.workbook;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import pilefolio.units.DisplaySystem;
import pilefolio.units.Unit;
import pilefolio.units.Units;

/**
 * A sample typed again in other units: every number is converted by the unit of its own column, to
 * the last digit, and the units are written above it.
 */
public final class Retyped {
  private static final String DOCUMENT_UNITS = "Document units";

  /** Units people type for the same thing. */
  private static final List<List<Unit>> ALIKE =
      List.of(
          units("kip", "t", "lb", "kg"),
          units("kN", "kip", "lb", "MN"),
          units("m", "in", "cm", "ft", "mm", "yd"),
          units("psf", "kPa", "psi", "bar", "MPa", "ksf", "tsf", "ksi"),
          units("pcf", "kN/m³", "lb/in³", "MN/m³"),
          units("h", "min", "d"),
          units("°F", "°C"));

  /** Chooses the unit in which a column is typed; it fits the column. */
  private interface Choice {
    Unit of(NumberColumn column);
  }

  private final TextTables tables;
  private final Choice choice;

  private Retyped(TextTables tables, Choice choice) {
    this.tables = tables;
    this.choice = choice;
  }

  /** A sample as it stands in its source. */
  public static byte[] asItStands(String sample) throws IOException {
    return TextTables.sample(sample).bytes();
  }

  /** The system of a sample's source. */
  public static DisplaySystem system(String sample) {
    return TextTables.sample(sample).system();
  }

  /** A sample typed in the units of a system, with its documents in the same. */
  public static byte[] in(DisplaySystem system, String sample) throws IOException {
    return in(system, TextTables.sample(sample));
  }

  /** The same without the toe levels of its secondaries. */
  public static byte[] withoutToesIn(DisplaySystem system, String sample) throws IOException {
    return in(system, blanked(sample));
  }

  private static byte[] in(DisplaySystem system, TextTables tables) throws IOException {
    return new Retyped(tables, column -> column.unit(system)).bytes(system);
  }

  /** A sample as it stands, with a column of a table left empty. */
  public static byte[] without(String sheet, String column, String sample) throws IOException {
    TextTables tables = TextTables.sample(sample);
    SheetText text = tables.sheet(sheet);
    int at = text.head().indexOf(column);
    text.rows().forEach(row -> row.set(at, ""));
    return tables.bytes();
  }

  /** A sample whose source is changed as text before it is typed. */
  public static byte[] edited(String sample, UnaryOperator<String> change) throws IOException {
    return TextTables.parse(change.apply(TextTables.source(sample))).bytes();
  }

  /** A sample as it stands, on another design basis. */
  public static byte[] onBasis(String basis, String sample) throws IOException {
    return edited(
        sample,
        text -> text.replaceFirst("(?m)^Design basis( *)\\|.*$", "Design basis$1| " + basis));
  }

  /** A sample in which each column is typed in the next of the units that people use for it. */
  public static byte[] mixed(String sample) throws IOException {
    AtomicInteger next = new AtomicInteger();
    TextTables tables = TextTables.sample(sample);
    Choice choice =
        column -> {
          List<Unit> possible =
              ALIKE.stream()
                  .filter(units -> units.stream().allMatch(u -> column.fitting(u).isPresent()))
                  .findFirst()
                  .orElse(List.of(column.unit(), column.usUnit()));
          return possible.get(next.getAndIncrement() % possible.size());
        };
    return new Retyped(tables, choice).bytes(tables.system());
  }

  private static TextTables blanked(String sample) {
    TextTables tables = TextTables.sample(sample);
    SheetText piles = tables.sheet("Piles");
    int toe = piles.head().indexOf("Toe level");
    piles.rows().stream().filter(row -> row.contains("Secondary")).forEach(row -> row.set(toe, ""));
    return tables;
  }

  private static List<Unit> units(String... symbols) {
    return Stream.of(symbols).map(Units::of).toList();
  }

  private byte[] bytes(DisplaySystem documents) throws IOException {
    for (SheetSpec spec : WorkbookSpec.SHEETS) {
      SheetText text = tables.sheet(spec.name());
      if (text != null && spec.isForm()) {
        text.rows().replaceAll(row -> item(spec, row));
      } else if (text != null) {
        table(spec, text);
      }
    }
    tables
        .sheet("Project")
        .rows()
        .replaceAll(
            row ->
                row.get(0).equals(DOCUMENT_UNITS)
                    ? List.of(DOCUMENT_UNITS, documents.name())
                    : row);
    return tables.bytes();
  }

  private void table(SheetSpec spec, SheetText text) {
    List<String> written = new ArrayList<>();
    for (int at = 0; at < text.head().size(); at++) {
      Optional<NumberColumn> column = number(spec, text.head().get(at));
      if (column.isEmpty() || !column.get().hasUnit()) {
        written.add("");
        continue;
      }
      Unit from = typed(column.get(), at < text.units().size() ? text.units().get(at) : "");
      Unit to = choice.of(column.get());
      written.add(to.symbol());
      int cell = at;
      UnaryOperator<String> convert = number -> converted(column.get(), number, from, to);
      text.rows().stream()
          .filter(row -> row.size() > cell)
          .forEach(row -> row.set(cell, convert.apply(row.get(cell))));
    }
    text.units().clear();
    text.units().addAll(written);
  }

  private List<String> item(SheetSpec spec, List<String> row) {
    Optional<NumberColumn> column = number(spec, row.get(0));
    if (column.isEmpty() || !column.get().hasUnit()) {
      return row;
    }
    Unit from = typed(column.get(), row.size() > 2 ? row.get(2) : "");
    Unit to = choice.of(column.get());
    return List.of(row.get(0), converted(column.get(), row.get(1), from, to), to.symbol());
  }

  private static Optional<NumberColumn> number(SheetSpec spec, String name) {
    return spec.columns().stream()
        .filter(column -> column.name().equals(name))
        .filter(NumberColumn.class::isInstance)
        .map(NumberColumn.class::cast)
        .findFirst();
  }

  private Unit typed(NumberColumn column, String unit) {
    return unit.isEmpty() ? column.unit(tables.system()) : Units.of(unit);
  }

  private static String converted(NumberColumn column, String number, Unit from, Unit to) {
    if (number.isEmpty() || from.equals(to)) {
      return number;
    }
    double si = column.fitting(from).orElseThrow().toSi(Double.parseDouble(number));
    return Double.toString(column.fitting(to).orElseThrow().fromSi(si));
  }
}
