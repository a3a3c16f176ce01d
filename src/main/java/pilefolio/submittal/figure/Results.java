package pilefolio.submittal.figure;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.situation.RunDesign;
import pilefolio.checks.situation.WallSolution;
import pilefolio.model.WallRun;
import pilefolio.submittal.Answer;
import pilefolio.submittal.Submittal;
import pilefolio.trace.Calculation;
import pilefolio.trace.Verdict.Result;

/** Finds the results that figures show. */
final class Results {
  private Results() {}

  /** The worst result of a check for a run that was worked out. */
  static Optional<CheckResult> of(Submittal submittal, String checkId, String run) {
    return worked(submittal.answers(checkId), run).map(Answer::result);
  }

  /** The first sheet of a result that has a symbol. */
  static Optional<Calculation> sheet(CheckResult result, String symbol) {
    return result.calculations().stream().filter(c -> c.values().containsKey(symbol)).findFirst();
  }

  /**
   * The wall in the situation that governs its embedment: the one that the calculation package
   * prints in full; else the one that needs the deepest toe; else the first.
   */
  static Optional<WallSolution> governing(Submittal submittal, WallRun run) {
    List<WallSolution> solutions = RunDesign.of(submittal.job(), run).solutions();
    Optional<Answer> answer =
        worked(
            submittal.answers(Family.STABILITY).stream()
                .filter(a -> a.checkId().startsWith("embedment-"))
                .toList(),
            run.id());
    return answer
        .flatMap(
            a ->
                solutions.stream()
                    .filter(s -> s.situation().subject().equals(a.result().subject()))
                    .findFirst())
        .or(() -> RunDesign.of(submittal.job(), run).deepest())
        .or(() -> solutions.stream().filter(s -> s.loading().isPresent()).findFirst())
        .or(() -> solutions.stream().findFirst());
  }

  private static Optional<Answer> worked(List<Answer> answers, String run) {
    return answers.stream()
        .filter(a -> a.result().subject().run().equals(run))
        .filter(a -> a.verdict().result() != Result.NOT_CHECKED)
        .filter(a -> !a.result().calculations().isEmpty())
        .max(Comparator.comparingDouble(a -> a.verdict().severity()));
  }
}
