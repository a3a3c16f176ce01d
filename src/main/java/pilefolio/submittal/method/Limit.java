package pilefolio.submittal.method;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pilefolio.submittal.Answer;
import pilefolio.submittal.KeyFigure;
import pilefolio.submittal.Submittal;

/**
 * The governing requirement of a check that the works must keep: what is needed, what there is, and
 * the result.
 *
 * @param family family of the check, in capitals, as {@code RIG}
 * @param check id of the check
 * @param title title of the check
 * @param subject what it is about, in words
 * @param meaning what is required, in words; empty if the check was not made
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
    String subject,
    String meaning,
    String needed,
    String available,
    String utilisation,
    String result,
    boolean satisfied,
    String reason,
    String source) {

  /** One row for each check and wall run, the worst answer; equal rows are told together. */
  static List<Limit> all(Submittal submittal) {
    record Key(String check, String run) {}
    Map<Key, Answer> worst = new LinkedHashMap<>();
    for (Answer answer : submittal.answers()) {
      if (!answer.derivation()) {
        worst.putIfAbsent(new Key(answer.checkId(), answer.result().subject().run()), answer);
      }
    }
    Map<Limit, List<String>> subjects = new LinkedHashMap<>();
    for (Answer answer : worst.values()) {
      subjects
          .computeIfAbsent(of(answer, submittal), row -> new ArrayList<>())
          .add(answer.result().subject().label());
    }
    List<Limit> rows = new ArrayList<>();
    subjects.forEach((row, about) -> rows.add(row.about(String.join("; ", about))));
    return rows;
  }

  private static Limit of(Answer answer, Submittal submittal) {
    KeyFigure key = KeyFigure.of(answer, submittal.printer());
    return new Limit(
        answer.result().check().family().name(),
        answer.checkId(),
        answer.title(),
        "",
        key.meaning(),
        key.demand(),
        key.capacity(),
        answer.utilisation(),
        answer.words(),
        answer.verdict().satisfied(),
        answer.verdict().reason(),
        FactWriter.source(answer));
  }

  private Limit about(String subjects) {
    return new Limit(
        family,
        check,
        title,
        subjects,
        meaning,
        needed,
        available,
        utilisation,
        result,
        satisfied,
        reason,
        source);
  }
}
