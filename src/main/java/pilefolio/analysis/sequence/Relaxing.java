package pilefolio.analysis.sequence;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.DoubleFunction;
import java.util.function.UnaryOperator;

/**
 * Looks for single changes that make a programme possible, each by searching again with the one
 * rule changed. For every rule the smallest of a few steps that helps is kept.
 */
final class Relaxing {
  private final SequenceJob job;
  private final long effort;
  private final List<Infeasible.Relaxation> found = new ArrayList<>();

  Relaxing(SequenceJob job, long effort) {
    this.job = job;
    this.effort = effort;
  }

  List<Infeasible.Relaxation> all() {
    windowEnd();
    windowStart();
    freshDiameters();
    shift();
    concrete();
    calendar();
    ageDifference();
    latestDay();
    return found;
  }

  private void windowEnd() {
    double tightest =
        windows().stream().mapToDouble(StrengthWindow::to).min().orElse(Double.POSITIVE_INFINITY);
    double[] to = {tightest + 0.5, tightest + 1, tightest + 2, tightest + 3, tightest + 5};
    double[] and10 = Arrays.copyOf(to, to.length + 1);
    and10[to.length] = tightest + 10;
    firstThatHelps(
        Infeasible.Change.WINDOW_END,
        tightest,
        and10,
        end -> job.withPiles(eachWindow(w -> new StrengthWindow(w.from(), Math.max(w.to(), end)))));
  }

  private void windowStart() {
    double latest = windows().stream().mapToDouble(StrengthWindow::from).max().orElse(0);
    List<Double> steps = new ArrayList<>();
    for (double less : new double[] {0.25, 0.5, 1, 1.5, 2}) {
      if (latest - less > 0.1) {
        steps.add(latest - less);
      }
    }
    firstThatHelps(
        Infeasible.Change.WINDOW_START,
        latest,
        steps.stream().mapToDouble(Double::doubleValue).toArray(),
        start ->
            job.withPiles(eachWindow(w -> new StrengthWindow(Math.min(w.from(), start), w.to()))));
  }

  private void freshDiameters() {
    FreshPileRule rule = job.rules().fresh();
    List<Double> steps = new ArrayList<>();
    for (double k = Math.ceil(rule.diameters()) - 1; k >= 2; k--) {
      steps.add(k);
    }
    firstThatHelps(
        Infeasible.Change.FRESH_DIAMETERS,
        rule.diameters(),
        steps.stream().mapToDouble(Double::doubleValue).toArray(),
        k ->
            job.withRules(
                job.rules().withFresh(new FreshPileRule(k, rule.leastDistance(), rule.hours()))));
  }

  private void shift() {
    double present = job.crews().stream().mapToDouble(Crew::minutes).min().orElse(0);
    double pile = job.piles().stream().mapToDouble(WallPile::minutes).max().orElse(0);
    firstThatHelps(
        Infeasible.Change.SHIFT_MINUTES,
        present,
        new double[] {present + pile, present + 2 * pile, present + 3 * pile, 2 * present},
        minutes ->
            job.withCrews(
                job.crews().stream()
                    .map(c -> new Crew(c.name(), Math.max(c.minutes(), minutes), c.runs()))
                    .toList()));
  }

  private void concrete() {
    double present = job.rules().dailyConcrete();
    if (Double.isFinite(present)) {
      firstThatHelps(
          Infeasible.Change.DAILY_CONCRETE,
          present,
          new double[] {1.25 * present, 1.5 * present, 2 * present},
          volume -> job.withRules(job.rules().withDailyConcrete(volume)));
    }
  }

  private void calendar() {
    SiteCalendar now = job.calendar();
    int present = now.workingDays().size();
    List<Double> steps = new ArrayList<>();
    for (int days = present + 1; days <= 7; days++) {
      steps.add((double) days);
    }
    firstThatHelps(
        Infeasible.Change.WORKING_DAYS,
        present,
        steps.stream().mapToDouble(Double::doubleValue).toArray(),
        days ->
            job.withCalendar(
                new SiteCalendar(now.start(), more(now.workingDays(), days), now.daysOff())));
    if (!now.daysOff().isEmpty()) {
      firstThatHelps(
          Infeasible.Change.DAYS_OFF,
          now.daysOff().size(),
          new double[] {0},
          none -> job.withCalendar(new SiteCalendar(now.start(), now.workingDays(), Set.of())));
    }
  }

  /** More working days, Saturday before Sunday, then the others in their order. */
  private static Set<DayOfWeek> more(Set<DayOfWeek> days, double wanted) {
    Set<DayOfWeek> longer = EnumSet.copyOf(days);
    List<DayOfWeek> added = new ArrayList<>(List.of(DayOfWeek.SATURDAY));
    added.addAll(List.of(DayOfWeek.values()));
    for (DayOfWeek day : added) {
      if (longer.size() < wanted) {
        longer.add(day);
      }
    }
    return longer;
  }

  private void ageDifference() {
    int present = job.rules().flankAgeDifference();
    firstThatHelps(
        Infeasible.Change.AGE_DIFFERENCE,
        present,
        new double[] {present + 1.0, present + 2.0, present + 4.0},
        days -> job.withRules(job.rules().withAgeDifference((int) days)));
  }

  private void latestDay() {
    int present = job.rules().latestDay();
    if (present == SequenceRules.OPEN_END) {
      return;
    }
    int last =
        Scheduler.lastDay(
            job.withRules(job.rules().withLatestDay(SequenceRules.OPEN_END)), 4 * effort);
    for (int day = present + 1; last >= 0 && day <= Math.min(last, present + 5); day++) {
      int sooner = Scheduler.lastDay(job.withRules(job.rules().withLatestDay(day)), 2 * effort);
      if (sooner >= 0) {
        last = sooner;
      }
    }
    if (last >= 0) {
      found.add(
          new Infeasible.Relaxation(
              Infeasible.Change.LATEST_DAY, present, last, job.calendar().date(last)));
    }
  }

  private void firstThatHelps(
      Infeasible.Change change, double present, double[] steps, DoubleFunction<SequenceJob> with) {
    for (double step : steps) {
      int last = Scheduler.lastDay(with.apply(step), effort);
      if (last >= 0) {
        found.add(new Infeasible.Relaxation(change, present, step, job.calendar().date(last)));
        return;
      }
    }
  }

  private List<StrengthWindow> windows() {
    return job.piles().stream().filter(WallPile::isPrimary).map(WallPile::window).toList();
  }

  private List<WallPile> eachWindow(UnaryOperator<StrengthWindow> change) {
    return job.piles().stream()
        .map(p -> p.isPrimary() ? p.withWindow(change.apply(p.window())) : p)
        .toList();
  }
}
