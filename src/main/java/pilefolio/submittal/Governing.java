package pilefolio.submittal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The governing check of a subject and family.
 *
 * @param subject wall run or whole job, with the family
 * @param check number and title of the check
 * @param utilisation as printed, or empty
 * @param words result words
 */
public record Governing(String subject, String check, String utilisation, String words) {

  /** One row for each subject: the answer that is worst. */
  public static List<Governing> of(Submittal submittal) {
    Map<String, Answer> worst = new LinkedHashMap<>();
    for (Answer answer : submittal.answers()) {
      if (answer.derivation()) {
        continue;
      }
      String run = answer.result().subject().run();
      String subject =
          (run.isEmpty() ? "job" : "run " + run)
              + ", "
              + answer.result().check().family().shortName();
      worst.merge(
          subject, answer, (a, b) -> b.verdict().severity() > a.verdict().severity() ? b : a);
    }
    List<Governing> rows = new ArrayList<>();
    worst.forEach(
        (subject, answer) ->
            rows.add(
                new Governing(
                    subject,
                    answer.number() + " " + answer.title(),
                    answer.utilisation(),
                    answer.words())));
    rows.sort(java.util.Comparator.comparing(Governing::subject));
    return rows;
  }
}
