package pilefolio.workbook;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import pilefolio.findings.CellRef;
import pilefolio.model.Choice;
import pilefolio.units.Unit;

/**
 * A column whose cells hold one of a fixed list of answers.
 *
 * @param <T> what an answer becomes
 * @param name name in the head row
 * @param answers the answers in their order
 * @param label an answer as typed
 * @param need whether a cell must be filled in
 * @param fallback the default, if there is one
 * @param meaning what is meant
 * @param example an example
 */
public record ChoiceColumn<T>(
    String name,
    List<T> answers,
    Function<T, String> label,
    Need need,
    Optional<T> fallback,
    String meaning,
    String example)
    implements Column<T> {

  static <E extends Enum<E> & Choice> ChoiceColumn<E> choice(
      String name, Class<E> answers, String meaning) {
    return of(name, List.of(answers.getEnumConstants()), Choice::label, meaning);
  }

  static ChoiceColumn<Boolean> yesNo(String name, String meaning) {
    return of(name, List.of(true, false), yes -> yes ? "Yes" : "No", meaning);
  }

  static <T> ChoiceColumn<T> of(
      String name, List<T> answers, Function<T, String> label, String meaning) {
    return new ChoiceColumn<>(
        name,
        answers,
        label,
        Need.OPTIONAL,
        Optional.empty(),
        meaning,
        label.apply(answers.get(0)));
  }

  ChoiceColumn<T> required() {
    return new ChoiceColumn<>(name, answers, label, Need.REQUIRED, fallback, meaning, example);
  }

  ChoiceColumn<T> standard(T value) {
    return new ChoiceColumn<>(
        name, answers, label, Need.DEFAULTED, Optional.of(value), meaning, label.apply(value));
  }

  ChoiceColumn<T> such(T value) {
    return new ChoiceColumn<>(name, answers, label, need, fallback, meaning, label.apply(value));
  }

  /** The answers as typed. */
  public List<String> labels() {
    return answers.stream().map(label).toList();
  }

  @Override
  public String expected(Unit unit) {
    return name + " is one of: " + String.join(", ", labels());
  }

  @Override
  public Optional<T> read(CellContent content, Place place) {
    String typed;
    if (content instanceof CellContent.Words words) {
      typed = words.text();
    } else if (content instanceof CellContent.Truth truth) {
      typed = truth.value() ? "Yes" : "No";
    } else if (content instanceof CellContent.Figure figure) {
      typed = String.valueOf(figure.value());
    } else {
      return Optional.empty();
    }
    for (T answer : answers) {
      if (loose(label.apply(answer)).equals(loose(typed))) {
        return Optional.of(answer);
      }
    }
    Optional<String> near = Nearest.to(typed, labels());
    place.report(
        FindingKind.NOT_A_CHOICE,
        name + " is \"" + NumberColumn.shortened(typed) + "\"",
        near.map(word -> "did you mean " + word + "? ").orElse("") + expected(place.unit()));
    return Optional.empty();
  }

  private static String loose(String text) {
    return text.replace('\u00a0', ' ').strip().toLowerCase(Locale.ROOT);
  }

  @Override
  public Optional<T> standard(CellRef cell) {
    return fallback;
  }

  @Override
  public String standardText() {
    return fallback.map(label).orElse("");
  }
}
