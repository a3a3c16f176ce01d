package pilefolio.trace;

import java.util.ArrayList;
import java.util.List;
import pilefolio.trace.Element.Case;

/**
 * The cases of a piecewise formula, in order; the first that holds is taken.
 *
 * @param cases the cases; the last may have no condition
 */
public record Choice(List<Case> cases) {

  /** The first case. */
  public static Choice when(String condition, String formula) {
    return new Choice(List.of(new Case(Condition.of(condition), Formula.of(formula))));
  }

  /** A further case. */
  public Choice or(String condition, String formula) {
    return plus(new Case(Condition.of(condition), Formula.of(formula)));
  }

  /** The case taken if no other holds. */
  public Choice otherwise(String formula) {
    return plus(new Case(null, Formula.of(formula)));
  }

  private Choice plus(Case next) {
    List<Case> more = new ArrayList<>(cases);
    more.add(next);
    return new Choice(List.copyOf(more));
  }
}
