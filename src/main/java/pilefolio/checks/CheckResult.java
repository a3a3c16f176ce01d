package pilefolio.checks;

import java.util.List;
import java.util.OptionalDouble;
import pilefolio.trace.Calculation;
import pilefolio.trace.Verdict;

/**
 * What came of a check for one subject.
 *
 * @param check the check
 * @param subject what it was about
 * @param calculations the sheets worked through, in order; empty if not checked
 * @param verdict the outcome over all of them
 */
public record CheckResult(
    Check check, Subject subject, List<Calculation> calculations, Verdict verdict) {

  /** Copies the list. */
  public CheckResult {
    calculations = List.copyOf(calculations);
  }

  /** A result whose verdict is the worst of its calculations. */
  public static CheckResult of(Check check, Subject subject, Calculation... calculations) {
    return of(check, subject, List.of(calculations));
  }

  /** A result whose verdict is the worst of its calculations. */
  public static CheckResult of(Check check, Subject subject, List<Calculation> calculations) {
    boolean satisfied = calculations.stream().allMatch(c -> c.verdict().satisfied());
    OptionalDouble most =
        calculations.stream()
            .map(c -> c.verdict().utilisation())
            .filter(OptionalDouble::isPresent)
            .mapToDouble(OptionalDouble::getAsDouble)
            .max();
    return new CheckResult(check, subject, calculations, Verdict.of(satisfied, most));
  }

  /** A result that could not be had. */
  public static CheckResult notChecked(Check check, Subject subject, String reason) {
    return new CheckResult(check, subject, List.of(), Verdict.notChecked(reason));
  }

  /** The coherent SI value of a symbol of the first sheet that has it. */
  public double value(String symbol) {
    return calculations.stream()
        .filter(c -> c.values().containsKey(symbol.replace('′', '\'')))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException(check.id() + " has no symbol " + symbol))
        .value(symbol);
  }
}
