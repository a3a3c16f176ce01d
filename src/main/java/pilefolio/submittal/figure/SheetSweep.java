package pilefolio.submittal.figure;

import java.util.List;
import java.util.Map;
import pilefolio.trace.Binding;
import pilefolio.trace.Binding.Row;
import pilefolio.trace.CalcTable.GivenColumn;
import pilefolio.trace.Calculation;
import pilefolio.trace.Calculation.FoundEntry;
import pilefolio.trace.Calculation.GivenEntry;
import pilefolio.trace.Calculation.RowValues;
import pilefolio.trace.Calculation.TableEntry;
import pilefolio.trace.Given;
import pilefolio.trace.Source;

/**
 * Works a calculation out again with one value changed, over and over, so that a curve comes from
 * the lines that are printed.
 */
final class SheetSweep {
  private static final Source SWEPT = new Source.Layout("place along a curve");

  private SheetSweep() {}

  /** The calculation with one given changed; coherent SI. */
  static Calculation given(Calculation calculation, String symbol, double si) {
    return repeat(calculation, Map.of(symbol, si), "", "", List.of());
  }

  /** The rows of a table for other values of one of its given columns; coherent SI. */
  static List<RowValues> rows(
      Calculation calculation, String table, String column, List<Double> values) {
    return repeat(calculation, Map.of(), table, column, values).table(table).rows();
  }

  private static Calculation repeat(
      Calculation calculation,
      Map<String, Double> changed,
      String table,
      String column,
      List<Double> values) {
    Binding binding = calculation.sheet().bind();
    for (Calculation.Entry entry : calculation.entries()) {
      if (entry instanceof GivenEntry e) {
        binding.set(e.element().symbol(), value(e.element().symbol(), e.given(), changed));
      } else if (entry instanceof FoundEntry e) {
        binding.set(e.element().symbol(), value(e.element().symbol(), e.given(), changed));
      } else if (entry instanceof TableEntry e) {
        if (e.table().id().equals(table)) {
          for (double value : values) {
            binding.row(table, row(e, e.rows().get(0)).set(column, value, SWEPT));
          }
        } else {
          e.rows().forEach(row -> binding.row(e.table().id(), row(e, row)));
        }
      }
    }
    return binding.calculate();
  }

  private static Given value(String symbol, Given given, Map<String, Double> changed) {
    return changed.containsKey(symbol) ? new Given(changed.get(symbol), SWEPT) : given;
  }

  private static Row row(TableEntry entry, RowValues values) {
    Row row = Row.of(values.label());
    for (var column : entry.table().columns()) {
      if (column instanceof GivenColumn) {
        row =
            row.set(
                column.symbol(),
                values.values().get(column.symbol()),
                values.sources().get(column.symbol()));
      }
    }
    return row;
  }
}
