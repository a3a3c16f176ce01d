package pilefolio.workbook;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Consumer;
import pilefolio.findings.Finding;

/** Crews have time to work, the first day is worked, and triggers come in order. */
final class WorksRule implements Rule {
  @Override
  public void check(Book book, KnownNames names, Consumer<Finding> findings) {
    for (Row run : book.rows(WallSheet.RUNS)) {
      crew(run, book, findings);
    }
    book.rows(WorksSheet.CREWS).forEach(crew -> shift(crew, findings));
    book.form(WorksSheet.CALENDAR).ifPresent(form -> firstDay(form, book, findings));
    book.rows(SurroundingsSheet.MONITORING).forEach(row -> triggers(row, findings));
  }

  private static void crew(Row run, Book book, Consumer<Finding> findings) {
    Optional<String> rig = run.find(WallSheet.RIG);
    boolean known = book.first(PlantSheet.RIGS, PlantSheet.RIG_ID, rig).isPresent();
    if (known && book.first(WorksSheet.CREWS, WorksSheet.CREW_RIG, rig).isEmpty()) {
      findings.accept(
          FindingKind.RIG_WITHOUT_CREW.at(
              run.place(WallSheet.RIG),
              "the rig " + rig.orElse("") + " has no crew",
              "add one on the sheet Crews"));
    }
  }

  private static void shift(Row crew, Consumer<Finding> findings) {
    Optional<Double> shift = crew.si(WorksSheet.SHIFT);
    Optional<Double> lost = crew.si(WorksSheet.NON_PRODUCTIVE);
    if (shift.isPresent() && lost.isPresent() && lost.get() >= shift.get()) {
      findings.accept(
          FindingKind.SHIFT_TOO_SHORT.at(
              crew.place(WorksSheet.NON_PRODUCTIVE),
              "start, stop and breaks take the whole shift",
              "give minutes a shift"));
    }
  }

  private static void firstDay(Row form, Book book, Consumer<Finding> findings) {
    Optional<LocalDate> start = form.find(WorksSheet.START);
    Optional<WorksSheet.Week> week = form.effective(WorksSheet.WEEK);
    if (start.isEmpty() || week.isEmpty()) {
      return;
    }
    boolean off =
        book.rows(WorksSheet.DAYS_OFF).stream()
            .anyMatch(row -> row.find(WorksSheet.DAY_OFF).equals(start));
    if (off || !week.get().days().contains(start.get().getDayOfWeek())) {
      findings.accept(
          FindingKind.START_NOT_WORKED.at(
              form.place(WorksSheet.START),
              "the first working day is a day off",
              "the works begin on the next day that is worked"));
    }
  }

  private static void triggers(Row row, Consumer<Finding> findings) {
    Optional<Double> amber = row.si(SurroundingsSheet.AMBER);
    Optional<Double> red = row.si(SurroundingsSheet.RED);
    if (amber.isPresent() && red.isPresent() && red.get() <= amber.get()) {
      findings.accept(
          FindingKind.TRIGGERS_OUT_OF_ORDER.at(
              row.place(SurroundingsSheet.RED),
              "the red trigger is not beyond the amber one",
              "amber warns before red stops the works"));
    }
  }
}
