package pilefolio.submittal.method;

import java.util.Optional;
import pilefolio.findings.CellRef;
import pilefolio.model.Value;
import pilefolio.submittal.Answer;
import pilefolio.submittal.Submittal;
import pilefolio.submittal.ValueText;
import pilefolio.trace.Printed;
import pilefolio.trace.Printed.PrintedGiven;
import pilefolio.trace.Printed.PrintedLine;
import pilefolio.trace.Printer;
import pilefolio.trace.Source;
import pilefolio.units.DisplaySystem;
import pilefolio.units.NumberText;
import pilefolio.units.Unit;
import pilefolio.units.Units;

/** Writes values of the workbook and results of checks as facts, in the documents' units. */
public final class FactWriter {
  private final Submittal submittal;
  private final DisplaySystem system;
  private final ValueText text;
  private final Printer printer;

  /** A writer for one package. */
  public FactWriter(Submittal submittal) {
    this.submittal = submittal;
    this.system = submittal.system();
    this.text = new ValueText(system);
    this.printer = submittal.printer();
  }

  /** The system of units of the documents. */
  public DisplaySystem system() {
    return system;
  }

  /** The printer of the documents. */
  public Printer printer() {
    return printer;
  }

  /** A value of the workbook, in the documents' unit for the declared one. */
  public Fact value(Value value, Unit declared) {
    return new Fact(text.of(value, declared), source(value));
  }

  /** The same, or empty where the cell is empty and has no default. */
  public Optional<Fact> value(Optional<Value> value, Unit declared) {
    return value.map(v -> value(v, declared));
  }

  /**
   * A value whose declared unit has no US counterpart: as entered in US documents, declared in SI
   * ones.
   */
  public Fact entered(Value value, Unit declared) {
    return value(value, system == DisplaySystem.US ? value.unit() : declared);
  }

  /** A slope of 1 in n. */
  public Fact slope(Value value) {
    return new Fact("1 in " + NumberText.usual(value.si()), source(value));
  }

  /** An elevation. */
  public Fact level(Value value) {
    return new Fact(levelText(value.si()), source(value));
  }

  /** A coherent SI number in the documents' unit for the declared one. */
  public String text(double si, Unit declared) {
    return text.of(si, declared);
  }

  /** An elevation in metres as documents print it. */
  public String levelText(double metres) {
    return withUnit(text.level(metres), system.of(Units.M));
  }

  /** The number of {@link #text} alone. */
  public String number(double si, Unit declared) {
    return text.number(si, declared);
  }

  /** The number of {@link #levelText} alone; serves coordinates as well. */
  public String levelNumber(double metres) {
    return text.level(metres);
  }

  /** The unit in which values declared in a unit are printed. */
  public String unit(Unit declared) {
    return text.unit(declared);
  }

  /** A text of the workbook. */
  public Fact words(String text, CellRef at) {
    return new Fact(text, at.address());
  }

  /** Where a value stands, in the words of the calculations. */
  public static String source(Value value) {
    return new Source.Cell(value.cell(), value.column(), value.defaulted()).text();
  }

  /** How the method statement cites an answer. */
  public static String source(Answer answer) {
    return "Calculations " + answer.number();
  }

  /**
   * A line of a check's worst answer for a wall run, printed as the calculations print it.
   *
   * @param checkId the check
   * @param run id of the run; an answer for the whole job serves every run
   * @param piles first words of the subject's piles, or empty for any
   * @param symbol symbol of the line
   * @return empty if the check was not made for the run
   */
  public Optional<Fact> result(String checkId, String run, String piles, String symbol) {
    return submittal.answers(checkId).stream()
        .filter(a -> a.result().subject().run().equals(run) || a.result().subject().run().isEmpty())
        .filter(a -> a.result().subject().piles().startsWith(piles))
        .flatMap(a -> line(a, symbol).stream())
        .findFirst();
  }

  /** A line or given of an answer, or empty if the answer has no such symbol. */
  public Optional<Fact> line(Answer answer, String symbol) {
    for (Printed printed : answer.printed(printer)) {
      for (Printed.Entry entry : printed.entries()) {
        if (entry instanceof PrintedLine l && l.symbol().equals(symbol)) {
          return Optional.of(new Fact(withUnit(l.number(), l.unit()), source(answer)));
        }
        if (entry instanceof PrintedGiven g && g.symbol().equals(symbol)) {
          return Optional.of(new Fact(withUnit(g.number(), g.unit()), source(answer)));
        }
      }
    }
    return Optional.empty();
  }

  static String withUnit(String number, Unit unit) {
    String symbol = unit.symbol();
    if (symbol.isEmpty()) {
      return number;
    }
    return symbol.equals("°") ? number + symbol : number + " " + symbol;
  }
}
