package pilefolio.checks;

import java.util.List;
import pilefolio.trace.CalcSheet;

/**
 * One question that a design engineer or a contractor must answer, with the sheet that answers it.
 *
 * <p>Each check has a page {@code checks/<id>.md} in the resources and cases {@code
 * cases/<id>/*.json} in the test resources. Ids never change, since documents cite them.
 */
public interface Check {

  /** Stable id in lower case with hyphens, such as {@code joint-overlap}. */
  String id();

  /** Title as documents print it. */
  String title();

  /** The family it belongs to. */
  Family family();

  /** Every sheet that it may print. */
  List<CalcSheet> sheets();

  /**
   * Works the check out for all its subjects. What is missing or outside a method's range gives a
   * result that is not checked, with the reason; a subject to which the question does not apply
   * gives no result.
   */
  List<CheckResult> run(Job job);

  /**
   * True if it only derives values that other checks use, and so asks no question: it has no
   * verdict and is not counted.
   */
  default boolean derivation() {
    return false;
  }

  /**
   * True if its results are shown in full for the situations that decide a run, and not for its own
   * worst one: what other checks of those situations rest on.
   */
  default boolean shownBySituation() {
    return derivation();
  }
}
