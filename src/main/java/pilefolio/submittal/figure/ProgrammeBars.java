package pilefolio.submittal.figure;

import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import pilefolio.analysis.sequence.Programme;
import pilefolio.analysis.sequence.Programme.PlannedPile;
import pilefolio.model.Pile;
import pilefolio.model.PileKind;
import pilefolio.model.Submission;
import pilefolio.model.WallRun;
import pilefolio.submittal.Submittal;
import pilefolio.submittal.figure.ProgrammeData.Bar;
import pilefolio.submittal.figure.ProgrammeData.Day;
import pilefolio.submittal.figure.ProgrammeData.Row;

/** The programme as bars: a row for the primaries and one for the secondaries of each run. */
final class ProgrammeBars {
  static final String CHECK = "programme";

  private ProgrammeBars() {}

  static ProgrammeData of(Submittal submittal, Programme programme) {
    Submission submission = submittal.job().submission();
    LocalDate first =
        programme.piles().stream()
            .map(PlannedPile::date)
            .min(LocalDate::compareTo)
            .orElseThrow(() -> new IllegalArgumentException("a programme without piles"));
    LocalDate last =
        programme.piles().stream().map(PlannedPile::date).max(LocalDate::compareTo).orElseThrow();
    List<Row> rows = new ArrayList<>();
    for (WallRun run : submission.secantRuns()) {
      for (PileKind kind : PileKind.secant()) {
        rows.add(row(run, kind, programme, first));
      }
    }
    return new ProgrammeData(
        "programme",
        "Programme of all "
            + programme.piles().size()
            + " piles, from "
            + first
            + " to "
            + last
            + "; "
            + programme.drillingDays()
            + " days of drilling. Bars say how many piles are made.",
        days(submission, first, last),
        rows);
  }

  private static List<Day> days(Submission submission, LocalDate first, LocalDate last) {
    List<Day> days = new ArrayList<>();
    for (LocalDate day = first; !day.isAfter(last); day = day.plusDays(1)) {
      days.add(
          new Day(
              day.getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH) + " " + day.getYear(),
              day.getDayOfMonth(),
              day.getDayOfWeek().getDisplayName(TextStyle.SHORT, Locale.ENGLISH).substring(0, 2),
              !submission.calendar().isWorked(day)));
    }
    return days;
  }

  private static Row row(WallRun run, PileKind kind, Programme programme, LocalDate first) {
    Map<String, Pile> piles = new HashMap<>();
    run.layout().piles().forEach(pile -> piles.put(pile.mark(), pile));
    SortedMap<Integer, Integer> counts = new TreeMap<>();
    for (PlannedPile planned : programme.piles()) {
      Pile pile = piles.get(planned.mark());
      if (pile != null && pile.kind() == kind) {
        int day = (int) (planned.date().toEpochDay() - first.toEpochDay());
        counts.merge(day, 1, Integer::sum);
      }
    }
    return new Row(
        "Run "
            + DrawingUnits.words(run.id())
            + (kind == PileKind.PRIMARY ? ", primaries" : ", secondaries"),
        kind == PileKind.SECONDARY,
        bars(counts));
  }

  /** Days without a gap are one bar, which says how many piles are made. */
  private static List<Bar> bars(SortedMap<Integer, Integer> counts) {
    List<Bar> bars = new ArrayList<>();
    int from = -1;
    int to = -1;
    int made = 0;
    for (Map.Entry<Integer, Integer> day : counts.entrySet()) {
      if (from >= 0 && day.getKey() > to + 1) {
        bars.add(new Bar(from, to, String.valueOf(made)));
        from = -1;
        made = 0;
      }
      from = from < 0 ? day.getKey() : from;
      to = day.getKey();
      made += day.getValue();
    }
    if (from >= 0) {
      bars.add(new Bar(from, to, String.valueOf(made)));
    }
    return bars;
  }
}
