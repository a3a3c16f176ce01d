package pilefolio.submittal.method;

import java.util.ArrayList;
import java.util.List;
import pilefolio.submittal.Answer;
import pilefolio.submittal.Submittal;
import pilefolio.trace.Verdict.Result;

/**
 * Something the calculations leave open: a requirement that does not hold, or a check that could
 * not be made. The method statement shows them on its first pages.
 *
 * @param source the calculation
 * @param title title of the check
 * @param subject what it is about
 * @param result result in words
 * @param utilisation demand over capacity, or empty
 * @param reason why it was not checked, or empty
 * @param refused true if the requirement does not hold
 */
public record OpenPoint(
    String source,
    String title,
    String subject,
    String result,
    String utilisation,
    String reason,
    boolean refused) {

  /** Every open point, requirements that do not hold first. */
  static List<OpenPoint> all(Submittal submittal) {
    List<OpenPoint> points = new ArrayList<>();
    submittal.with(Result.NOT_SATISFIED).forEach(answer -> points.add(of(answer)));
    submittal.with(Result.NOT_CHECKED).forEach(answer -> points.add(of(answer)));
    return points;
  }

  private static OpenPoint of(Answer answer) {
    return new OpenPoint(
        FactWriter.source(answer),
        answer.title(),
        answer.result().subject().label(),
        answer.words(),
        answer.utilisation(),
        answer.verdict().reason(),
        answer.verdict().result() == Result.NOT_SATISFIED);
  }
}
