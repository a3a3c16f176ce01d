package pilefolio.checks.sequence;

import static pilefolio.units.Units.MIN;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pilefolio.analysis.sequence.Crew;
import pilefolio.analysis.sequence.FreshPileRule;
import pilefolio.analysis.sequence.Infeasible;
import pilefolio.analysis.sequence.Programme;
import pilefolio.analysis.sequence.Scheduler;
import pilefolio.analysis.sequence.SequenceJob;
import pilefolio.analysis.sequence.SequenceOutcome;
import pilefolio.analysis.sequence.SequenceRules;
import pilefolio.analysis.sequence.SiteCalendar;
import pilefolio.analysis.sequence.StrengthWindow;
import pilefolio.analysis.sequence.WallPile;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck.MissingInput;
import pilefolio.model.Methods;
import pilefolio.model.Pile;
import pilefolio.model.PileKind;
import pilefolio.model.PileLayout;
import pilefolio.model.Submission;
import pilefolio.model.WallRun;
import pilefolio.trace.Calculation;
import pilefolio.units.Units;

/**
 * The programme of a submission, searched once for all checks and documents.
 *
 * @param sequence piles, rigs, calendar and rules; empty if inputs are missing
 * @param outcome a programme, or what stands in its way; empty if inputs are missing
 * @param missing what is missing, as a sentence; empty if nothing
 * @param starts start of each planned pile, hours after the shift of the first day begins
 */
public record Programmes(
    Optional<SequenceJob> sequence,
    Optional<SequenceOutcome> outcome,
    String missing,
    Map<String, Double> starts) {

  /** Copies the map. */
  public Programmes {
    starts = Map.copyOf(starts);
  }

  /** The programme of a job, worked out at the first call. */
  public static Programmes of(Job job) {
    return job.shared(Programmes.class, Programmes.class, Programmes::make);
  }

  /** The programme, if one was found. */
  public Optional<Programme> programme() {
    return outcome.filter(Programme.class::isInstance).map(Programme.class::cast);
  }

  /** What stands in the way, if no programme was found. */
  public Optional<Infeasible> infeasible() {
    return outcome.filter(Infeasible.class::isInstance).map(Infeasible.class::cast);
  }

  /** The programme, or the check is not made for want of it. */
  Programme needed() {
    return programme()
        .orElseThrow(
            () ->
                new MissingInput(
                    missing.isEmpty()
                        ? "There is no programme that keeps every rule."
                        : "There is no programme. " + missing));
  }

  /** Age of one planned pile when another is started, days. */
  double age(String older, String younger) {
    return (starts.get(younger) - starts.get(older)) / 24;
  }

  private static Programmes make(Job job) {
    try {
      SequenceJob sequence = sequence(job);
      SequenceOutcome outcome = Scheduler.programme(sequence);
      Map<String, Double> starts = new HashMap<>();
      if (outcome instanceof Programme programme) {
        for (Programme.PlannedPile pile : programme.piles()) {
          double worked = share(job, pile.crew());
          starts.put(pile.mark(), 24.0 * pile.day() + pile.afterMinutes() / 60 / worked);
        }
      }
      return new Programmes(Optional.of(sequence), Optional.of(outcome), "", starts);
    } catch (MissingInput | ArithmeticException | IllegalArgumentException e) {
      return new Programmes(Optional.empty(), Optional.empty(), e.getMessage(), Map.of());
    }
  }

  private static double share(Job job, String crew) {
    return job.submission().crews().stream()
        .filter(c -> c.id().equals(crew))
        .mapToDouble(c -> c.availability().si())
        .findFirst()
        .orElse(1);
  }

  private static SequenceJob sequence(Job job) {
    Submission submission = job.submission();
    List<WallPile> piles = new ArrayList<>();
    double longestShift = 0;
    for (WallRun run : submission.secantRuns()) {
      StrengthWindow window = WindowOfPrimaries.window(job, run);
      Calculation primary = CycleTime.of(job, run, PileKind.PRIMARY);
      Calculation secondary = CycleTime.of(job, run, PileKind.SECONDARY);
      piles.addAll(piles(run, window, primary, secondary));
      longestShift = Math.max(longestShift, Units.H.fromSi(primary.value("t_S")));
    }
    List<Crew> crews = new ArrayList<>();
    for (pilefolio.model.Crew crew : submission.crews()) {
      Set<String> runs = new HashSet<>();
      submission.secantRuns().stream()
          .filter(run -> run.rig().equals(crew.rig()))
          .forEach(run -> runs.add(run.id()));
      if (!runs.isEmpty()) {
        double minutes =
            MIN.fromSi(crew.shift().si() - crew.nonProductive().si()) * crew.availability().si();
        crews.add(new Crew(crew.id(), minutes, runs));
      }
    }
    Set<LocalDate> off = new HashSet<>();
    submission.calendar().daysOff().forEach(day -> off.add(day.date()));
    Methods methods = submission.methods();
    return new SequenceJob(
        piles,
        crews,
        new SiteCalendar(submission.calendar().start(), submission.calendar().workingDays(), off),
        new SequenceRules(
            // The search counts whole days; the last pile of one day and the first of a later one
            // are
            // a shift closer than that.
            new FreshPileRule(
                methods.freshPileFactor().si(),
                0,
                Units.H.fromSi(methods.freshPileTime().si())
                    + Units.H.fromSi(longestShift(submission))),
            (int) Math.floor(Units.D.fromSi(methods.largestAgeDifference().si()) + 1e-9),
            longestShift,
            submission.supply().dailyCap().map(cap -> cap.si()).orElse(Double.POSITIVE_INFINITY),
            SequenceRules.OPEN_END));
  }

  /** The longest shift of any crew, s. */
  static double longestShift(Submission submission) {
    return submission.crews().stream().mapToDouble(crew -> crew.shift().si()).max().orElse(0);
  }

  private static List<WallPile> piles(
      WallRun run, StrengthWindow window, Calculation primary, Calculation secondary) {
    PileLayout layout = run.layout();
    List<WallPile> piles = new ArrayList<>();
    for (Pile pile : layout.piles()) {
      Calculation cycle = pile.primary() ? primary : secondary;
      double minutes = MIN.fromSi(cycle.value("T_n"));
      double concrete = cycle.value("V_a");
      double diameter = run.piles(pile.kind()).diameter().si();
      piles.add(
          pile.primary()
              ? WallPile.primary(
                  pile.mark(),
                  run.id(),
                  pile.east(),
                  pile.north(),
                  diameter,
                  minutes,
                  concrete,
                  window)
              : WallPile.secondary(
                  pile.mark(),
                  run.id(),
                  pile.east(),
                  pile.north(),
                  diameter,
                  minutes,
                  concrete,
                  layout.neighbours(pile).stream().map(Pile::mark).toList()));
    }
    return piles;
  }
}
