package pilefolio.submittal.calculations;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pilefolio.checks.Family;
import pilefolio.model.Submission;
import pilefolio.standards.Combination;
import pilefolio.standards.DesignBasis;
import pilefolio.submittal.Answer;
import pilefolio.submittal.Engine;
import pilefolio.submittal.InputLine;
import pilefolio.submittal.Submittal;
import pilefolio.submittal.ValueText;
import pilefolio.submittal.calculations.CheckView.AnswerView;
import pilefolio.submittal.calculations.CheckView.FigureRef;
import pilefolio.trace.Verdict.Result;

/**
 * Everything the calculation package prints, as final texts.
 *
 * @param control document control
 * @param combinations ids of the combinations, the columns of the factor table
 * @param basisTitle title of the design basis
 * @param factors its factors
 * @param references documents with their clauses, and where they are cited
 * @param overrides factors changed by the user, with the reason
 * @param assumptions defaults taken
 * @param profiles ground
 * @param layerUnits units of the columns of the layer table
 * @param runs wall runs
 * @param stageUnits units of the columns of the stage table
 * @param stateUnits units of the columns of the table of layer states
 * @param supportUnits units of the columns of the support table
 * @param loadUnits units of the columns of the table of local loads
 * @param figures figures at the head of the run chapter, by run id
 * @param chapters the checks by family
 * @param neighbours what neighbours may expect; empty if no movement is known
 * @param counts count of questions by result words
 * @param worst answers that are not satisfied or not checked
 * @param inputs the input echo
 * @param record a row for each check, for the checker to sign
 * @param engine what made the package
 */
public record CalculationContent(
    Control control,
    List<String> combinations,
    String basisTitle,
    List<FactorRow> factors,
    List<List<String>> references,
    List<List<String>> overrides,
    List<List<String>> assumptions,
    List<ProfileView> profiles,
    List<String> layerUnits,
    List<RunView> runs,
    List<String> stageUnits,
    List<String> stateUnits,
    List<String> supportUnits,
    List<String> loadUnits,
    Map<String, List<FigureRef>> figures,
    List<Chapter> chapters,
    List<NeighbourView> neighbours,
    Map<String, Integer> counts,
    List<Open> worst,
    List<List<String>> inputs,
    List<RecordRow> record,
    Engine engine) {

  /** A chapter of checks. */
  public record Chapter(String number, String anchor, String title, List<CheckView> checks) {}

  /** An answer that must be looked at. */
  public record Open(String number, String title, AnswerView answer) {}

  /** A row of the checker's record. */
  public record RecordRow(
      String number, String id, String title, String subject, String words, String tone) {}

  /**
   * Prepares the content.
   *
   * @param submittal the answers
   * @param figures figures by check id, and by {@code run:<id>} for the run chapter
   */
  public static CalculationContent of(Submittal submittal, Map<String, List<FigureRef>> figures) {
    Submission submission = submittal.job().submission();
    DesignBasis basis = submittal.job().basis();
    ValueText text = new ValueText(submittal.system());
    Tables tables = new Tables(submission, basis, text);
    return new CalculationContent(
        Control.of(submission),
        basis.combinations().stream().map(Combination::id).toList(),
        basis.title(),
        tables.factors(),
        Citations.of(submittal),
        submission.basis().overrides().stream()
            .map(
                o ->
                    List.of(
                        o.at().address(),
                        o.factor(),
                        pilefolio.units.NumberText.usual(o.value().si()),
                        o.reason()))
            .toList(),
        submission.assumptions().stream()
            .map(a -> List.of(a.cell().address(), a.subject(), a.column(), a.text()))
            .toList(),
        tables.profiles(),
        tables.layerUnits(),
        tables.runs(),
        tables.stageUnits(),
        tables.stateUnits(),
        tables.supportUnits(),
        tables.loadUnits(),
        figures,
        chapters(submittal, figures),
        NeighbourView.of(submittal),
        counts(submittal),
        worst(submittal),
        submittal.inputs().stream().map(CalculationContent::input).toList(),
        record(submittal),
        submittal.engine());
  }

  private static List<Chapter> chapters(Submittal submittal, Map<String, List<FigureRef>> figures) {
    List<Chapter> chapters = new ArrayList<>();
    for (Family family : Family.values()) {
      Map<String, List<Answer>> byCheck = new LinkedHashMap<>();
      for (Answer answer : submittal.answers(family)) {
        byCheck.computeIfAbsent(answer.checkId(), key -> new ArrayList<>()).add(answer);
      }
      if (byCheck.isEmpty()) {
        continue;
      }
      Collection<List<Answer>> answers = byCheck.values();
      String number = answers.iterator().next().get(0).number();
      chapters.add(
          new Chapter(
              number.substring(0, number.indexOf('.')),
              "family-" + family.name().toLowerCase(java.util.Locale.ROOT),
              family.title(),
              answers.stream()
                  .map(
                      list ->
                          CheckView.of(
                              submittal,
                              list,
                              figures.getOrDefault(list.get(0).checkId(), List.of())))
                  .toList()));
    }
    return chapters;
  }

  private static Map<String, Integer> counts(Submittal submittal) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    for (Result result : Result.values()) {
      counts.put(result.words(), submittal.with(result).size());
    }
    return counts;
  }

  private static List<Open> worst(Submittal submittal) {
    List<Open> open = new ArrayList<>();
    for (Result result : List.of(Result.NOT_SATISFIED, Result.NOT_CHECKED)) {
      for (Answer answer : submittal.with(result)) {
        open.add(
            new Open(
                answer.number(),
                answer.title(),
                CheckView.view(answer, submittal.printer(), false)));
      }
    }
    return open;
  }

  /** One row a check; the words are those of its worst answer. */
  private static List<RecordRow> record(Submittal submittal) {
    Map<String, List<Answer>> byCheck = new LinkedHashMap<>();
    submittal
        .answers()
        .forEach(a -> byCheck.computeIfAbsent(a.checkId(), key -> new ArrayList<>()).add(a));
    List<RecordRow> rows = new ArrayList<>();
    for (List<Answer> answers : byCheck.values()) {
      Answer worst = answers.get(0);
      long open = answers.stream().filter(a -> !a.derivation() && !a.verdict().satisfied()).count();
      rows.add(
          new RecordRow(
              worst.number(),
              worst.checkId(),
              worst.title(),
              answers.size()
                  + (answers.size() == 1 ? " answer" : " answers")
                  + (open == 0 ? "" : ", " + open + " open"),
              worst.words(),
              CheckView.tone(worst)));
    }
    return rows;
  }

  private static List<String> input(InputLine line) {
    return List.of(line.cell().address(), line.name(), line.text(), line.unit());
  }
}
