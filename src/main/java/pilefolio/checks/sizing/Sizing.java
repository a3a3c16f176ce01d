package pilefolio.checks.sizing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Job;
import pilefolio.findings.CellRef;
import pilefolio.model.Assumption;
import pilefolio.model.Beam;
import pilefolio.model.WallRun;
import pilefolio.trace.Verdict.Result;
import pilefolio.units.NumberText;
import pilefolio.units.Unit;
import pilefolio.units.Units;

/**
 * Finds what the user leaves to the engine: the spacing of soldier beams, sections of beams and toe
 * levels.
 *
 * <p>First the widest spacing with the heaviest beam of its family, then the lightest beam at that
 * spacing, then the toe, which may decide about the beam again. After the first round beams only
 * grow heavier and toes only deeper, so the search ends.
 */
public final class Sizing {
  private final Map<String, SpacingSize> spacings = new LinkedHashMap<>();
  private final Map<String, Integer> spacingOf = new HashMap<>();
  private final List<BeamSize> beams;
  private final Map<String, Integer> sectionOf = new HashMap<>();
  private final List<String> toes;
  private final Map<String, Double> toeOf = new HashMap<>();
  private Job job;

  private Sizing(Job job) {
    this.job = job;
    beams = BeamSize.of(job);
    toes =
        job.submission().runs().stream().filter(r -> r.toe().isEmpty()).map(WallRun::id).toList();
    for (WallRun run : job.submission().runs()) {
      if (run.type().soldierBeams() && run.line().spacingIsSized()) {
        spacings.put(run.id(), new SpacingSize(run.id(), run.toe().isEmpty()));
      }
    }
  }

  /**
   * The job with everything sized that can be; what was found is listed among the assumptions with
   * what governed it and the next smaller that fails. A run without equilibrium is left as it is,
   * and its checks say why.
   */
  public static Job sized(Job job) {
    Sizing sizing = new Sizing(job);
    if (sizing.toes.isEmpty() && sizing.beams.isEmpty() && sizing.spacings.isEmpty()) {
      return job;
    }
    sizing.run();
    return sizing.noted();
  }

  private void run() {
    for (BeamSize beam : beams) {
      place(beam, beam.sections().size() - 1);
    }
    for (SpacingSize spacing : spacings.values()) {
      int widest = spacing.widest(job);
      spacingOf.put(spacing.run(), widest);
      job = spacing.with(job, widest);
    }
    deepen();
    Map<String, Integer> least = new HashMap<>();
    boolean changed = true;
    while (changed) {
      changed = false;
      for (BeamSize beam : beams) {
        int index = beam.lightest(job, least.getOrDefault(beam.id(), 0));
        changed |= !Integer.valueOf(index).equals(least.put(beam.id(), index));
        place(beam, index);
      }
      changed &= deepen();
    }
  }

  private void place(BeamSize beam, int index) {
    sectionOf.put(beam.id(), index);
    job = beam.with(job, index);
  }

  /** Sets the toes, none higher than before; true if one went down or was set. */
  private boolean deepen() {
    boolean changed = false;
    for (String run : toes) {
      Double before = toeOf.get(run);
      Job next =
          ToeSize.sized(
              job, run, before == null ? OptionalDouble.empty() : OptionalDouble.of(before));
      if (ToeSize.run(next, run).toe().isPresent()) {
        double level = ToeSize.run(next, run).toe().orElseThrow().si();
        changed |= before == null || level < before - ToeSize.STEP / 2;
        toeOf.put(run, level);
        job = next;
      }
    }
    return changed;
  }

  private Job noted() {
    List<Assumption> assumptions = new ArrayList<>(job.submission().assumptions());
    spacings.values().forEach(spacing -> assumptions.add(note(spacing)));
    beams.forEach(beam -> assumptions.add(note(beam)));
    toes.stream().filter(toeOf::containsKey).forEach(run -> assumptions.add(toe(run)));
    return new Job(job.submission().withAssumptions(assumptions), job.basis());
  }

  private Assumption note(SpacingSize spacing) {
    int index = spacingOf.get(spacing.run());
    Unit unit = SpacingSize.unit(job);
    List<Double> grid = SpacingSize.grid(job);
    Shortfalls left = spacing.shortfalls(job, index);
    String text =
        left.notSatisfied().isEmpty()
            ? shown(grid.get(index), unit) + ", the widest that passes"
            : shown(grid.get(index), unit) + ", no spacing passes every check";
    if (index > 0) {
      text += fails(shown(grid.get(index - 1), unit), spacing.shortfalls(job, index - 1), left);
    }
    WallRun run = ToeSize.run(job, spacing.run());
    return new Assumption(
        run.line().spacing().cell(), "spacing of the beams", "run " + run.id(), text);
  }

  private Assumption note(BeamSize beam) {
    int index = sectionOf.get(beam.id());
    Shortfalls left = beam.shortfalls(job, index);
    String name = beam.sections().get(index).name();
    String text =
        left.notSatisfied().isEmpty()
            ? name + ", the lightest that passes"
            : name + ", no section of the family passes every check";
    if (index > 0) {
      text += fails(beam.sections().get(index - 1).name(), beam.shortfalls(job, index - 1), left);
    }
    Beam sized = job.submission().beam(beam.id());
    return new Assumption(sized.at(), "section", "beam " + beam.id(), text);
  }

  private Assumption toe(String id) {
    WallRun run = ToeSize.run(job, id);
    double level = run.toe().orElseThrow().si();
    CellRef cell = run.toe().orElseThrow().cell();
    Unit unit = job.submission().project().documentUnits().of(Units.M);
    String text = level(level, unit) + ", the least that suffices";
    Job higher = ToeSize.at(job, run, level + ToeSize.STEP);
    text +=
        fails(
            level(level + ToeSize.STEP, unit),
            Shortfalls.of(higher, Set.of(id), ToeSize::asked),
            Shortfalls.of(job, Set.of(id), ToeSize::asked));
    return new Assumption(
        cell,
        run.type().secant() ? "toe level of the secondaries" : "toe level",
        "run " + id,
        text);
  }

  /** What decides: the worst that the next smaller fails and the one taken does not. */
  private static String fails(String smaller, Shortfalls its, Shortfalls left) {
    return its.without(left.questions())
        .governing()
        .map(worst -> "; governed by " + title(worst) + ": " + smaller + " " + outcome(worst))
        .orElse("");
  }

  private static String title(CheckResult result) {
    String title = result.check().title();
    return title.substring(0, 1).toLowerCase(Locale.ROOT) + title.substring(1);
  }

  private static String outcome(CheckResult result) {
    if (result.verdict().result() == Result.NOT_CHECKED) {
      return "is not covered";
    }
    OptionalDouble utilisation = result.verdict().utilisation();
    return utilisation.isPresent() && Double.isFinite(utilisation.getAsDouble())
        ? "is used to " + NumberText.fixed(utilisation.getAsDouble(), 3)
        : "does not hold";
  }

  private static String level(double si, Unit unit) {
    return NumberText.fixed(unit.fromSi(si), 2) + " " + unit.symbol();
  }

  private static String shown(double value, Unit unit) {
    return NumberText.fixed(value, 2) + " " + unit.symbol();
  }
}
