package pilefolio.trace;

import java.util.List;
import pilefolio.units.Unit;

/** One element of a calculation sheet, as declared. */
public sealed interface Element {

  /** A value handed in. */
  record GivenElement(String symbol, Unit unit, String meaning) implements Element {}

  /** A result of a numerical method; a later line verifies it. */
  record FoundElement(String symbol, Unit unit, String meaning, String method) implements Element {}

  /** A formula and its result. */
  record LineElement(String symbol, Formula formula, Unit unit, String meaning, Reference reference)
      implements Element {}

  /** A piecewise formula; the first case whose condition holds is taken. */
  record ChooseElement(
      String symbol, Unit unit, String meaning, Reference reference, List<Case> cases)
      implements Element {}

  /**
   * A case of a piecewise formula.
   *
   * @param condition when it applies; null for the last, "otherwise"
   * @param formula the formula
   */
  record Case(Condition condition, Formula formula) {}

  /** A table whose columns are formulas. */
  record TableElement(CalcTable table) implements Element {}

  /**
   * A requirement.
   *
   * @param ratio true if it sets a demand against a capacity, so that their ratio means something;
   *     false for a condition that holds or not, such as equilibrium
   */
  record RequireElement(Condition condition, String meaning, Reference reference, boolean ratio)
      implements Element {}

  /** A sentence. */
  record NoteElement(String text) implements Element {}
}
