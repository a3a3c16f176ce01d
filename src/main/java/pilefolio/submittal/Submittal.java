package pilefolio.submittal;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pilefolio.checks.Check;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Checks;
import pilefolio.checks.Family;
import pilefolio.checks.Job;
import pilefolio.checks.situation.KeySituations;
import pilefolio.trace.Printer;
import pilefolio.trace.Verdict.Result;
import pilefolio.units.DisplaySystem;

/**
 * The content of one package: the job, every answer in order, the input echo.
 *
 * @param job what was checked, with what its checks share
 * @param answers every result; check by check in the order of {@link Checks#ALL}, the worst of each
 *     check first
 * @param inputs the workbook's cells
 * @param engine what made the package
 */
public record Submittal(Job job, List<Answer> answers, List<InputLine> inputs, Engine engine) {

  /** Number of the first chapter of checks in the calculation package. */
  public static final int FIRST_CHAPTER = 6;

  /** Copies the lists. */
  public Submittal {
    answers = List.copyOf(answers);
    inputs = List.copyOf(inputs);
  }

  /** Runs every check and puts the answers in order. */
  public static Submittal of(Job job, List<InputLine> inputs, Engine engine) {
    List<Answer> answers = new ArrayList<>();
    Map<Family, Integer> chapters = new EnumMap<>(Family.class);
    Map<Family, Integer> sections = new EnumMap<>(Family.class);
    KeySituations key = KeySituations.of(job);
    for (Check check : Checks.ALL) {
      List<CheckResult> results = new ArrayList<>(check.run(job));
      if (results.isEmpty()) {
        continue;
      }
      if (!check.derivation()) {
        results.sort((a, b) -> Double.compare(b.verdict().severity(), a.verdict().severity()));
      }
      int chapter =
          chapters.computeIfAbsent(check.family(), family -> FIRST_CHAPTER + chapters.size());
      int section = sections.merge(check.family(), 1, Integer::sum);
      Set<String> seen = new HashSet<>();
      for (int i = 0; i < results.size(); i++) {
        // A wall run is a design of its own and is shown in full; installation is one subject.
        String group = check.family().byRun() ? results.get(i).subject().run() : "";
        answers.add(
            new Answer(
                check.id() + "-" + (i + 1),
                chapter + "." + section,
                results.get(i),
                check.shownBySituation() ? key.hold(results.get(i).subject()) : seen.add(group)));
      }
    }
    return new Submittal(job, answers, inputs, engine);
  }

  /** The units in which documents are written. */
  public DisplaySystem system() {
    return job.submission().project().documentUnits();
  }

  /** A printer in the documents' units. */
  public Printer printer() {
    return new Printer(system());
  }

  /** The answers of a family. */
  public List<Answer> answers(Family family) {
    return answers.stream().filter(a -> a.result().check().family() == family).toList();
  }

  /** The answers of a check. */
  public List<Answer> answers(String checkId) {
    return answers.stream().filter(a -> a.checkId().equals(checkId)).toList();
  }

  /** The worst answer of a check over the whole job, if the check applies to it. */
  public Optional<Answer> governing(String checkId) {
    return answers(checkId).stream().filter(Answer::governing).findFirst();
  }

  /** Answers to questions with a given result. */
  public List<Answer> with(Result result) {
    return answers.stream()
        .filter(a -> a.verdict().result() == result)
        .filter(a -> !a.derivation() || result == Result.NOT_CHECKED)
        .toList();
  }

  /** True if every question is answered and satisfied. */
  public boolean allSatisfied() {
    return with(Result.NOT_SATISFIED).isEmpty() && with(Result.NOT_CHECKED).isEmpty();
  }
}
