package pilefolio.submittal.method;

import java.util.ArrayList;
import java.util.List;
import pilefolio.submittal.Answer;
import pilefolio.trace.Calculation;
import pilefolio.trace.Calculation.RequireEntry;
import pilefolio.trace.Condition.Sign;
import pilefolio.trace.Printed;
import pilefolio.trace.Printed.PrintedRequire;
import pilefolio.trace.Printer;
import pilefolio.trace.Verdict.Result;

/**
 * One requirement that the works must keep: what is needed, what there is, and the result.
 *
 * @param family family of the check, in capitals, as {@code RIG}
 * @param check id of the check
 * @param title title of the check
 * @param run id of the wall run, or empty for the whole job
 * @param subject what it is about, in words
 * @param meaning what is required, in words
 * @param needed the demand with its unit, or empty if the check was not made
 * @param available the capacity or limit with its unit, or empty if the check was not made
 * @param utilisation demand over capacity, or empty
 * @param result result in words
 * @param satisfied true only if the check was made and the requirement holds
 * @param reason why it was not checked, or empty
 * @param source the calculation
 */
public record Limit(
    String family,
    String check,
    String title,
    String run,
    String subject,
    String meaning,
    String needed,
    String available,
    String utilisation,
    String result,
    boolean satisfied,
    String reason,
    String source) {

  /** Every requirement of an answer; one row with the reason if the check was not made. */
  static List<Limit> of(Answer answer, Printer printer) {
    if (answer.verdict().result() == Result.NOT_CHECKED) {
      return List.of(notMade(answer));
    }
    List<Limit> rows = new ArrayList<>();
    for (Printed printed : answer.printed(printer)) {
      Calculation calculation = printed.calculation();
      for (int i = 0; i < printed.entries().size(); i++) {
        if (printed.entries().get(i) instanceof PrintedRequire require
            && calculation.entries().get(i) instanceof RequireEntry entry) {
          rows.add(made(answer, require, entry));
        }
      }
    }
    return rows;
  }

  private static Limit made(Answer answer, PrintedRequire require, RequireEntry entry) {
    String left = FactWriter.withUnit(require.leftNumber(), require.unit());
    String right = FactWriter.withUnit(require.rightNumber(), require.unit());
    Sign sign = entry.element().condition().parts().get(0).sign();
    boolean leftIsDemand = sign == Sign.AT_MOST || sign == Sign.LESS;
    return row(
        answer,
        require.meaning(),
        leftIsDemand ? left : right,
        leftIsDemand ? right : left,
        require.utilisation(),
        (require.satisfied() ? Result.SATISFIED : Result.NOT_SATISFIED).words(),
        require.satisfied(),
        "");
  }

  private static Limit notMade(Answer answer) {
    return row(
        answer,
        answer.title(),
        "",
        "",
        "",
        Result.NOT_CHECKED.words(),
        false,
        answer.verdict().reason());
  }

  private static Limit row(
      Answer answer,
      String meaning,
      String needed,
      String available,
      String utilisation,
      String result,
      boolean satisfied,
      String reason) {
    return new Limit(
        answer.result().check().family().name(),
        answer.checkId(),
        answer.title(),
        answer.result().subject().run(),
        answer.result().subject().label(),
        meaning,
        needed,
        available,
        utilisation,
        result,
        satisfied,
        reason,
        FactWriter.source(answer));
  }
}
