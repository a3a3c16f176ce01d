package pilefolio.submittal.schedule;

import java.util.Optional;
import java.util.OptionalDouble;
import pilefolio.model.PileKind;
import pilefolio.submittal.Answer;
import pilefolio.submittal.Submittal;

/** What the checks found for the primaries, or the secondaries, of a wall run. */
final class KindResults {
  private final Submittal submittal;
  private final String run;
  private final String piles;

  KindResults(Submittal submittal, String run, PileKind kind) {
    this.submittal = submittal;
    this.run = run;
    this.piles = kind == PileKind.PRIMARY ? "primaries" : "secondaries";
  }

  /** The answer of a check, if it was made for these piles. */
  Optional<Answer> answer(String checkId) {
    return submittal.answers(checkId).stream()
        .filter(a -> a.result().subject().run().equals(run))
        .filter(a -> a.result().subject().piles().equals(piles))
        .filter(a -> !a.result().calculations().isEmpty())
        .findFirst();
  }

  /** A value of a check, coherent SI, if the check was made. */
  OptionalDouble value(String checkId, String symbol) {
    return answer(checkId)
        .map(a -> OptionalDouble.of(a.result().value(symbol)))
        .orElse(OptionalDouble.empty());
  }
}
