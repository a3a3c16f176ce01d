package pilefolio.checks.sequence;

import static pilefolio.units.Units.D;
import static pilefolio.units.Units.MIN;
import static pilefolio.units.Units.ONE;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pilefolio.analysis.sequence.Infeasible;
import pilefolio.analysis.sequence.Programme;
import pilefolio.analysis.sequence.Programme.PlannedPile;
import pilefolio.analysis.sequence.ProgrammeAudit;
import pilefolio.analysis.sequence.Scheduler;
import pilefolio.analysis.sequence.SequenceJob;
import pilefolio.analysis.sequence.SequenceOutcome;
import pilefolio.analysis.sequence.WallPile;
import pilefolio.checks.Check;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.Subject;
import pilefolio.trace.Binding;
import pilefolio.trace.Binding.Row;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.CalcTable;
import pilefolio.trace.Calculation;
import pilefolio.trace.Reference;
import pilefolio.units.NumberText;

/** Whether an order of drilling exists that keeps every rule, day by day. */
public final class ProgrammeFound implements Check {
  private static final CalcSheet FOUND =
      CalcSheet.named("Programme day by day")
          .given("N", ONE, "piles of the job")
          .table(
              CalcTable.of("days", "Piles of each day", "day")
                  .given("n_1", ONE, "primaries")
                  .given("n_2", ONE, "secondaries")
                  .given("t_u", MIN, "time of the rigs used")
                  .given("t_A", MIN, "time of the rigs available")
                  .line("n_d = n_1 + n_2", ONE, "piles", Reference.DERIVED)
                  .line("r_t = t_u/t_A", ONE, "share of the time used", Reference.DERIVED)
                  .sum("N_d", "n_d", "piles with a day")
                  .largest("r_max", "r_t", "busiest day"))
          .found(
              "N_x",
              ONE,
              "rules broken",
              "count of every rule from the dates alone, apart from the search")
          .line("N_b = N − N_d", ONE, "piles without a day", Reference.DERIVED)
          .condition("N_b ≤ 0", "every pile has its day", Reference.DERIVED)
          .condition("N_x ≤ 0", "no rule is broken", Reference.DERIVED)
          .condition("r_max ≤ 1", "no shift is longer than it is", Reference.DERIVED);

  private static final CalcSheet BLOCKED =
      CalcSheet.named("Piles for which no day was found")
          .given("N", ONE, "piles of the job")
          .given("N_o", ONE, "orders of drilling tried")
          .table(
              CalcTable.of("blocked", "Piles without a day in the best order", "pile and rule")
                  .given("n_b", ONE, "piles without a day")
                  .sum("N_b", "n_b", "piles without a day"))
          .line("N_d = N − N_b", ONE, "piles with a day in the best order", Reference.DERIVED)
          .line("r_o = N_d/N_o", ONE, "piles placed for each order tried", Reference.DERIVED)
          .condition("N_b ≤ 0", "every pile has its day", Reference.DERIVED)
          .note("The search is wide but no proof that no order exists.");

  private static final CalcSheet CHANGES =
      CalcSheet.named("Single changes with which a programme was found")
          .table(
              CalcTable.of(
                      "changes", "Each found by searching again with one rule changed", "change")
                  .given("t_e", D, "days from the start to the last pile")
                  .smallest("t_min", "t_e", "shortest of them"))
          .note("Each change is to be agreed by those who answer for the rule.");

  @Override
  public String id() {
    return "programme";
  }

  @Override
  public String title() {
    return "Programme";
  }

  @Override
  public Family family() {
    return Family.SEQUENCE;
  }

  @Override
  public List<CalcSheet> sheets() {
    return List.of(FOUND, BLOCKED, CHANGES);
  }

  @Override
  public List<CheckResult> run(Job job) {
    Programmes programmes = Programmes.of(job);
    if (programmes.sequence().isEmpty()) {
      return List.of(CheckResult.notChecked(this, Subject.JOB, programmes.missing()));
    }
    SequenceJob sequence = programmes.sequence().get();
    return List.of(
        CheckResult.of(this, Subject.JOB, sheets(sequence, programmes.outcome().orElseThrow())));
  }

  /** Searches and works out the sheets that say what came of it. */
  public static List<Calculation> solve(SequenceJob sequence) {
    return sheets(sequence, Scheduler.programme(sequence));
  }

  private static List<Calculation> sheets(SequenceJob sequence, SequenceOutcome outcome) {
    return outcome instanceof Programme programme
        ? List.of(found(sequence, programme))
        : blocked(sequence, (Infeasible) outcome);
  }

  private static Calculation found(SequenceJob sequence, Programme programme) {
    Map<String, WallPile> piles = new HashMap<>();
    sequence.piles().forEach(p -> piles.put(p.mark(), p));
    Map<String, List<PlannedPile>> days = new LinkedHashMap<>();
    for (PlannedPile pile : programme.piles()) {
      days.computeIfAbsent(pile.date().toString(), d -> new ArrayList<>()).add(pile);
    }
    double available = sequence.crews().stream().mapToDouble(c -> c.minutes()).sum();
    Binding binding =
        FOUND
            .bind()
            .set("N", From.layout(sequence.piles().size(), "all runs"))
            .set(
                "N_x",
                From.method(
                    ProgrammeAudit.broken(sequence, programme).size(),
                    "count from the dates alone"));
    days.forEach(
        (date, made) -> {
          double primaries = made.stream().filter(p -> piles.get(p.mark()).isPrimary()).count();
          double used = made.stream().mapToDouble(p -> piles.get(p.mark()).minutes()).sum();
          binding.row(
              "days",
              Row.of(date)
                  .set("n_1", From.layout(primaries, "programme"))
                  .set("n_2", From.layout(made.size() - primaries, "programme"))
                  .set("t_u", From.layout(MIN.toSi(used), "times for one pile"))
                  .set("t_A", From.layout(MIN.toSi(available), "shifts of all rigs")));
        });
    return binding.calculate();
  }

  private static List<Calculation> blocked(SequenceJob sequence, Infeasible infeasible) {
    Binding binding =
        BLOCKED
            .bind()
            .set("N", From.layout(sequence.piles().size(), "all runs"))
            .set("N_o", From.method(infeasible.ordersTried(), "search"));
    for (Infeasible.BlockedPile pile : infeasible.blocked()) {
      binding.row(
          "blocked",
          Row.of(pile.mark() + ": " + pile.rule().words()).set("n_b", From.layout(1, "one pile")));
    }
    List<Calculation> sheets = new ArrayList<>(List.of(binding.calculate()));
    if (!infeasible.relaxations().isEmpty()) {
      Binding changes = CHANGES.bind();
      for (Infeasible.Relaxation change : infeasible.relaxations()) {
        double days =
            sequence.calendar().start().until(change.finish(), java.time.temporal.ChronoUnit.DAYS)
                + 1.0;
        changes.row(
            "changes",
            Row.of(words(sequence, change)).set("t_e", From.layout(D.toSi(days), "search")));
      }
      sheets.add(changes.calculate());
    }
    return sheets;
  }

  private static String words(SequenceJob sequence, Infeasible.Relaxation r) {
    String from = number(r.from());
    String to = number(r.to());
    return switch (r.change()) {
      case WINDOW_END -> "last age to cut " + to + " d in place of " + from + " d";
      case WINDOW_START -> "first age to cut " + to + " d in place of " + from + " d";
      case FRESH_DIAMETERS -> "distance to fresh piles " + to + " D in place of " + from + " D";
      case SHIFT_MINUTES -> to + " min of piling in a shift in place of " + from + " min";
      case DAILY_CONCRETE -> to + " m³ of concrete a day in place of " + from + " m³";
      case WORKING_DAYS -> to + " working days a week in place of " + from;
      case DAYS_OFF -> "work on the days off";
      case AGE_DIFFERENCE -> "age difference of primaries " + to + " d in place of " + from + " d";
      case LATEST_DAY -> "last pile on " + sequence.calendar().date((int) r.to());
    };
  }

  private static String number(double value) {
    return NumberText.usual(Math.rint(value * 100) / 100);
  }
}
