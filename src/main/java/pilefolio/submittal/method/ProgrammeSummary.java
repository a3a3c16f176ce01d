package pilefolio.submittal.method;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import pilefolio.analysis.sequence.Infeasible;
import pilefolio.analysis.sequence.Infeasible.BlockedPile;
import pilefolio.analysis.sequence.Infeasible.Relaxation;
import pilefolio.analysis.sequence.Programme;
import pilefolio.analysis.sequence.Programme.PlannedPile;
import pilefolio.analysis.sequence.SequenceOutcome;
import pilefolio.model.WorkCalendar;
import pilefolio.units.NumberText;
import pilefolio.units.Units;

/**
 * The programme in short, or why there is none.
 *
 * @param found true if an order was found that keeps every rule
 * @param source the calculation, or how it is known
 * @param facts {@code start}, {@code first}, {@code last}, {@code drillingDays}, {@code piles},
 *     {@code orders}; for a programme that was not found only {@code start} and {@code orders}
 * @param primariesFirst true if every primary is made before the first secondary
 * @param days one row a day, or empty
 * @param blocked piles without a day by the rule that stands in the way
 * @param changes single changes with which a programme was found
 * @param workingDays days of the week that are worked, in words
 * @param daysOff days on which nobody works
 */
public record ProgrammeSummary(
    boolean found,
    String source,
    Map<String, Fact> facts,
    boolean primariesFirst,
    List<Day> days,
    List<Blocked> blocked,
    List<Change> changes,
    Fact workingDays,
    List<Off> daysOff) {

  /** Copies the collections. */
  public ProgrammeSummary {
    facts = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(facts));
    days = List.copyOf(days);
    blocked = List.copyOf(blocked);
    changes = List.copyOf(changes);
    daysOff = List.copyOf(daysOff);
  }

  /**
   * A day of the programme.
   *
   * @param date the date with its day of the week
   * @param rig the crew
   * @param piles marks in the order in which they are made
   * @param count how many
   */
  public record Day(String date, String rig, List<String> piles, String count) {
    /** Copies the list. */
    public Day {
      piles = List.copyOf(piles);
    }
  }

  /** Piles without a day: the rule, their marks, and what was found for the first of them. */
  public record Blocked(String rule, List<String> piles, List<String> days) {
    /** Copies the lists. */
    public Blocked {
      piles = List.copyOf(piles);
      days = List.copyOf(days);
    }
  }

  /**
   * A change that makes a programme possible.
   *
   * @param code what is changed, as the template knows it
   * @param from present value
   * @param to value that helps
   * @param finish last day with it
   */
  public record Change(String code, String from, String to, String finish) {}

  /** A day off. */
  public record Off(String date, String reason, String source) {}

  static ProgrammeSummary of(
      SequenceOutcome outcome, String source, WorkCalendar calendar, FactWriter writer) {
    Map<String, Fact> facts = new LinkedHashMap<>();
    facts.put("start", new Fact(date(calendar.start()), calendar.at().address()));
    Fact week = new Fact(week(calendar), calendar.at().address());
    List<Off> off =
        calendar.daysOff().stream()
            .map(d -> new Off(date(d.date()), d.reason(), d.at().address()))
            .toList();
    if (outcome instanceof Programme programme) {
      return found(programme, source, facts, week, off);
    }
    Infeasible infeasible = (Infeasible) outcome;
    facts.put("orders", new Fact(String.valueOf(infeasible.ordersTried()), source));
    return new ProgrammeSummary(
        false,
        source,
        facts,
        false,
        List.of(),
        blocked(infeasible),
        infeasible.relaxations().stream().map(r -> change(r, calendar, writer)).toList(),
        week,
        off);
  }

  private static ProgrammeSummary found(
      Programme programme, String source, Map<String, Fact> facts, Fact week, List<Off> off) {
    List<LocalDate> dates = programme.piles().stream().map(PlannedPile::date).sorted().toList();
    facts.put("first", new Fact(date(dates.get(0)), source));
    facts.put("last", new Fact(date(dates.get(dates.size() - 1)), source));
    facts.put("drillingDays", new Fact(String.valueOf(programme.drillingDays()), source));
    facts.put("piles", new Fact(String.valueOf(programme.piles().size()), source));
    facts.put("orders", new Fact(String.valueOf(programme.ordersTried()), source));
    return new ProgrammeSummary(
        true,
        source,
        facts,
        programme.allPrimariesFirst(),
        days(programme),
        List.of(),
        List.of(),
        week,
        off);
  }

  private static List<Day> days(Programme programme) {
    record Key(LocalDate date, String crew) {}
    Map<Key, List<String>> byDay = new LinkedHashMap<>();
    programme.piles().stream()
        .sorted(
            Comparator.comparing(PlannedPile::date)
                .thenComparing(PlannedPile::crew)
                .thenComparing(PlannedPile::place))
        .forEach(
            p ->
                byDay
                    .computeIfAbsent(new Key(p.date(), p.crew()), k -> new ArrayList<>())
                    .add(p.mark()));
    List<Day> days = new ArrayList<>();
    byDay.forEach(
        (key, marks) ->
            days.add(new Day(date(key.date()), key.crew(), marks, String.valueOf(marks.size()))));
    return days;
  }

  private static List<Blocked> blocked(Infeasible infeasible) {
    Map<String, List<BlockedPile>> byRule = new LinkedHashMap<>();
    infeasible
        .blocked()
        .forEach(p -> byRule.computeIfAbsent(p.rule().words(), r -> new ArrayList<>()).add(p));
    List<Blocked> rows = new ArrayList<>();
    byRule.forEach(
        (rule, piles) ->
            rows.add(
                new Blocked(
                    rule,
                    piles.stream().map(BlockedPile::mark).toList(),
                    piles.get(0).days().stream()
                        .map(
                            d ->
                                date(d.date())
                                    + ": "
                                    + d.rule().words()
                                    + d.other().map(o -> " (" + o + ")").orElse(""))
                        .toList())));
    return rows;
  }

  private static Change change(Relaxation r, WorkCalendar calendar, FactWriter writer) {
    return new Change(
        r.change().name(),
        value(r, r.from(), calendar, writer),
        value(r, r.to(), calendar, writer),
        date(r.finish()));
  }

  private static String value(
      Relaxation r, double value, WorkCalendar calendar, FactWriter writer) {
    return switch (r.change()) {
      case WINDOW_END, WINDOW_START, AGE_DIFFERENCE -> NumberText.usual(value) + " d";
      case FRESH_DIAMETERS -> NumberText.usual(value) + " D";
      case SHIFT_MINUTES -> NumberText.fixed(value, 0) + " min";
      case DAILY_CONCRETE -> writer.text(value, Units.M3);
      case WORKING_DAYS, DAYS_OFF -> NumberText.fixed(value, 0);
      case LATEST_DAY -> date(calendar.start().plusDays(Math.round(value)));
    };
  }

  private static String week(WorkCalendar calendar) {
    List<String> names =
        calendar.workingDays().stream()
            .map((DayOfWeek d) -> d.getDisplayName(TextStyle.FULL, Locale.ENGLISH))
            .toList();
    return String.join(", ", names);
  }

  /** A date with its day of the week. */
  static String date(LocalDate date) {
    return date.getDayOfWeek().getDisplayName(TextStyle.SHORT, Locale.ENGLISH) + " " + date;
  }
}
