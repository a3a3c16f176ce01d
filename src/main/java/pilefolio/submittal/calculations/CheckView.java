package pilefolio.submittal.calculations;

import java.util.ArrayList;
import java.util.List;
import pilefolio.checks.CheckPage;
import pilefolio.submittal.Answer;
import pilefolio.submittal.KeyFigure;
import pilefolio.submittal.Submittal;
import pilefolio.trace.Printer;
import pilefolio.trace.Verdict.Result;

/**
 * One check as a section: its question, the governing answer in full, the others as rows.
 *
 * @param id id of the check
 * @param anchor link target of the section
 * @param number such as {@code 7.3}
 * @param title title
 * @param question what it asks
 * @param limits where the method holds
 * @param derivation true if it only derives values
 * @param full subject, result and sheets of the answers printed in full
 * @param others the other answers
 * @param figures ids of the figures that belong here, with captions
 */
public record CheckView(
    String id,
    String anchor,
    String number,
    String title,
    String question,
    String limits,
    boolean derivation,
    List<AnswerView> full,
    List<AnswerView> others,
    List<FigureRef> figures) {

  /** A figure in its place. */
  public record FigureRef(String id, String caption, String width, String height) {}

  /**
   * One answer.
   *
   * @param anchor link target
   * @param subject what it is about
   * @param requirement the requirement that decides it
   * @param demand demand with unit
   * @param capacity capacity with unit
   * @param utilisation demand over capacity
   * @param words result words
   * @param tone {@code ok}, {@code bad} or {@code open}
   * @param reason why it was not checked, or empty
   * @param sheets its sheets, if printed in full
   */
  public record AnswerView(
      String anchor,
      String subject,
      String requirement,
      String demand,
      String capacity,
      String utilisation,
      String words,
      String tone,
      String reason,
      List<SheetView> sheets) {}

  static CheckView of(Submittal submittal, List<Answer> answers, List<FigureRef> figures) {
    Printer printer = submittal.printer();
    Answer first = answers.get(0);
    CheckPage page = CheckPage.of(first.checkId());
    List<AnswerView> full = new ArrayList<>();
    List<AnswerView> others = new ArrayList<>();
    for (Answer answer : answers) {
      (answer.governing() ? full : others).add(view(answer, printer, answer.governing()));
    }
    return new CheckView(
        first.checkId(),
        "check-" + first.checkId(),
        first.number(),
        first.title(),
        page.question(),
        page.limits(),
        first.derivation(),
        List.copyOf(full),
        List.copyOf(others),
        figures);
  }

  /** An answer, with its sheets if it is printed in full. */
  static AnswerView view(Answer answer, Printer printer, boolean full) {
    KeyFigure key = KeyFigure.of(answer, printer);
    return new AnswerView(
        answer.anchor(),
        answer.result().subject().label(),
        key.meaning(),
        key.demand(),
        key.capacity(),
        answer.utilisation(),
        answer.words(),
        tone(answer),
        answer.verdict().reason(),
        full ? answer.printed(printer).stream().map(SheetView::of).toList() : List.of());
  }

  /** The class of the result word. */
  static String tone(Answer answer) {
    Result result = answer.verdict().result();
    if (result == Result.NOT_CHECKED) {
      return "open";
    }
    if (answer.derivation()) {
      return "open";
    }
    return result == Result.SATISFIED ? "ok" : "bad";
  }
}
