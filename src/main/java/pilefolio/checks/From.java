package pilefolio.checks;

import pilefolio.model.Value;
import pilefolio.standards.Factor;
import pilefolio.trace.Calculation;
import pilefolio.trace.Given;
import pilefolio.trace.Source;
import pilefolio.units.Units;

/** Hands values to calculations together with where they come from. */
public final class From {
  private From() {}

  /** A value of the workbook. */
  public static Given cell(Value value) {
    return new Given(value.si(), new Source.Cell(value.cell(), value.column(), value.defaulted()));
  }

  /** A factor of the design basis in a combination. */
  public static Given factor(Job job, String key, String combination) {
    Factor factor = job.basis().factor(key);
    double value = Units.of(factor.unit()).toSi(factor.in(combination));
    if (job.basis().isOverridden(key, combination)) {
      return new Given(value, new Source.Layout("design basis, value of the user"));
    }
    return new Given(value, new Source.Factor(key, factor.reference()));
  }

  /** A line of another check's calculation. */
  public static Given line(Check check, Calculation calculation, String symbol) {
    return new Given(calculation.value(symbol), new Source.Line(check.id(), check.title(), symbol));
  }

  /** A row of a section or material table. */
  public static Given table(double si, String table, String row) {
    return new Given(si, new Source.TableRow(table, row));
  }

  /** A result of a numerical method, coherent SI. */
  public static Given method(double si, String name) {
    return new Given(si, new Source.Method(name));
  }

  /** A value that follows from the layout, coherent SI. */
  public static Given layout(double si, String how) {
    return new Given(si, new Source.Layout(how));
  }
}
