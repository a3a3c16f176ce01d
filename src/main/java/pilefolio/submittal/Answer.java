package pilefolio.submittal;

import java.util.List;
import pilefolio.checks.CheckResult;
import pilefolio.trace.Printed;
import pilefolio.trace.Printer;
import pilefolio.trace.Verdict;

/**
 * One result of a check in its place in the package.
 *
 * @param anchor name by which documents link to it, such as {@code joint-overlap-3}
 * @param number number that documents print, such as {@code 5.2}; shared by the results of one
 *     check
 * @param result what came of it
 * @param governing true for the worst result of its check, or of its check in a wall run, and for
 *     what deciding situations rest on; these are printed in full, the others are rows of a table
 */
public record Answer(String anchor, String number, CheckResult result, boolean governing) {

  /** Id of the check. */
  public String checkId() {
    return result.check().id();
  }

  /** Title of the check. */
  public String title() {
    return result.check().title();
  }

  /** The verdict. */
  public Verdict verdict() {
    return result.verdict();
  }

  /** True if the check only derives values and so has no verdict to show. */
  public boolean derivation() {
    return result.check().derivation();
  }

  /** The words beside the answer: the result, or "derived". */
  public String words() {
    boolean made = verdict().result() != Verdict.Result.NOT_CHECKED;
    return derivation() && made ? "derived" : verdict().result().words();
  }

  /** Utilisation as printed, or empty. */
  public String utilisation() {
    return derivation() ? "" : Printer.utilisation(verdict().utilisation(), verdict().satisfied());
  }

  /** Every sheet in print. */
  public List<Printed> printed(Printer printer) {
    return result.calculations().stream().map(printer::print).toList();
  }
}
