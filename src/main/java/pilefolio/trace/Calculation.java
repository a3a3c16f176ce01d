package pilefolio.trace;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import pilefolio.trace.Element.Case;
import pilefolio.trace.Element.ChooseElement;
import pilefolio.trace.Element.FoundElement;
import pilefolio.trace.Element.GivenElement;
import pilefolio.trace.Element.LineElement;
import pilefolio.trace.Element.NoteElement;
import pilefolio.trace.Element.RequireElement;

/**
 * One calculation of a sheet: every element with its values, coherent SI and unrounded.
 *
 * @param sheet the sheet
 * @param entries the elements with their values
 * @param values the value of every symbol of the sheet
 * @param verdict the outcome of its requirements; satisfied without utilisation if it has none
 */
public record Calculation(
    CalcSheet sheet, List<Entry> entries, Map<String, Double> values, Verdict verdict) {

  /** An element with its values. */
  public sealed interface Entry {}

  /** A value handed in. */
  public record GivenEntry(GivenElement element, Given given) implements Entry {}

  /** A result of a numerical method. */
  public record FoundEntry(FoundElement element, Given given) implements Entry {}

  /** A line. */
  public record LineEntry(LineElement element, double value) implements Entry {}

  /** A piecewise line with the case that held. */
  public record ChooseEntry(ChooseElement element, Case taken, double value) implements Entry {}

  /** A table. */
  public record TableEntry(CalcTable table, List<RowValues> rows, Map<String, Double> totals)
      implements Entry {}

  /**
   * A row of a table.
   *
   * @param label what it stands for
   * @param values every column's value
   * @param sources where the given columns come from
   * @param taken the case that held, for piecewise columns
   */
  public record RowValues(
      String label,
      Map<String, Double> values,
      Map<String, Source> sources,
      Map<String, Case> taken) {}

  /** A requirement with both sides. */
  public record RequireEntry(
      RequireElement element,
      double left,
      double right,
      boolean satisfied,
      OptionalDouble utilisation)
      implements Entry {}

  /** A sentence. */
  public record NoteEntry(NoteElement element) implements Entry {}

  /**
   * The coherent SI value of a symbol.
   *
   * @throws FormulaException if the sheet has no such symbol
   */
  public double value(String symbol) {
    Double value = values.get(symbol.replace('′', '\''));
    if (value == null) {
      throw new FormulaException("sheet \"" + sheet.title() + "\" has no symbol " + symbol);
    }
    return value;
  }

  /** The table with the given name. */
  public TableEntry table(String id) {
    return entries.stream()
        .filter(TableEntry.class::isInstance)
        .map(TableEntry.class::cast)
        .filter(t -> t.table().id().equals(id))
        .findFirst()
        .orElseThrow(
            () -> new FormulaException("sheet \"" + sheet.title() + "\" has no table " + id));
  }
}
