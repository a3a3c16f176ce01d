package pilefolio.checks.sizing;

import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import pilefolio.checks.Check;
import pilefolio.checks.Family;
import pilefolio.checks.Job;
import pilefolio.checks.situation.DesignSituation;
import pilefolio.checks.situation.RunDesign;
import pilefolio.checks.situation.WallSolution;
import pilefolio.checks.sizing.Shortfalls.Question;
import pilefolio.findings.CellRef;
import pilefolio.model.PileSpec;
import pilefolio.model.Value;
import pilefolio.model.WallRun;
import pilefolio.units.NumberText;
import pilefolio.units.Units;

/**
 * The least deep toe of a run, on whole decimetres, at which the wall is in equilibrium with its
 * margin and every check of stability and of vertical capacity holds.
 *
 * <p>Each question that fails is followed down to the first level that answers it; one that no
 * level of the known ground answers is not one of depth, and is left to its check to report. The
 * toe only ever goes down, so the search ends at the base of the known ground at the latest.
 */
final class ToeSize {
  static final double STEP = 0.1;

  /** Questions of stability may be dear to answer; they are followed in longer steps first. */
  private static final int STRIDE = 5;

  /** Below several supports the search starts this far under the lowest excavation, m. */
  private static final double LEAST_EMBEDMENT = 0.5;

  private ToeSize() {}

  /** Checks whose answers depend on the toe. */
  static boolean asked(Check check) {
    return check.family() == Family.STABILITY || check.family() == Family.PILE;
  }

  /**
   * The job with a toe of the run that suffices, no higher than a given level; unchanged if a stage
   * has no equilibrium.
   *
   * @param from least deep level that comes into question, m; empty for no such limit
   */
  static Job sized(Job job, String id, OptionalDouble from) {
    WallRun run = run(job, id);
    OptionalDouble least = equilibrium(job, run);
    if (least.isEmpty()) {
      return job;
    }
    double base = job.submission().profile(run).base().si();
    double toe = grid(Math.min(least.getAsDouble(), from.orElse(Double.POSITIVE_INFINITY)));
    Set<Question> hopeless = new HashSet<>();
    while (true) {
      Job candidate = at(job, run, toe);
      // At the first level an unanswered question stays as it is; deeper it must be answered.
      Shortfalls failing =
          Shortfalls.of(candidate, Set.of(id), ToeSize::asked).notSatisfied().without(hopeless);
      if (failing.isEmpty()) {
        return candidate;
      }
      double deepest = toe;
      for (Question question : failing.questions()) {
        OptionalDouble level = firstGood(job, run, question, toe, base);
        if (level.isEmpty()) {
          hopeless.add(question);
        } else {
          deepest = Math.min(deepest, level.getAsDouble());
        }
      }
      toe = deepest;
    }
  }

  /** The first level below a toe that answers a question; empty if none in the known ground. */
  private static OptionalDouble firstGood(
      Job job, WallRun run, Question question, double toe, double base) {
    int count = (int) Math.floor((toe - base) / STEP + 1e-9);
    int stride = question.check().family() == Family.PILE ? 1 : STRIDE;
    for (int i = Math.min(stride, count); i >= 1 && i <= count; i = next(i, stride, count)) {
      if (good(job, run, question, toe - i * STEP)) {
        int first = Math.max(1, i - stride + 1);
        for (int j = first; j < i; j++) {
          if (good(job, run, question, toe - j * STEP)) {
            return OptionalDouble.of(grid(toe - j * STEP));
          }
        }
        return OptionalDouble.of(grid(toe - i * STEP));
      }
    }
    return OptionalDouble.empty();
  }

  private static int next(int at, int stride, int count) {
    return at == count ? count + 1 : Math.min(at + stride, count);
  }

  private static boolean good(Job job, WallRun run, Question question, double level) {
    return !Shortfalls.of(at(job, run, grid(level)), Set.of(run.id()), List.of(question.check()))
        .questions()
        .contains(question);
  }

  /** The least deep toe that limit equilibrium allows; empty if a stage has none. */
  private static OptionalDouble equilibrium(Job job, WallRun run) {
    RunDesign design = RunDesign.of(job, run);
    if (design.solutions().stream().anyMatch(s -> s.equilibrium().isEmpty())) {
      return OptionalDouble.empty();
    }
    OptionalDouble deepest =
        design.solutions().stream().mapToDouble(WallSolution::requiredToe).min();
    OptionalDouble belowSeveral =
        DesignSituation.of(job.submission(), job.basis(), run).stream()
            .filter(s -> s.supports().size() > 1)
            .mapToDouble(s -> s.designExcavation() - LEAST_EMBEDMENT)
            .min();
    if (deepest.isPresent() && belowSeveral.isPresent()) {
      return OptionalDouble.of(Math.min(deepest.getAsDouble(), belowSeveral.getAsDouble()));
    }
    return deepest.isPresent() ? deepest : belowSeveral;
  }

  private static double grid(double level) {
    return Math.floor(level / STEP + 1e-9) * STEP;
  }

  static WallRun run(Job job, String id) {
    return job.submission().runs().stream()
        .filter(r -> r.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  /** The job with a toe level of a run. */
  static Job at(Job job, WallRun run, double level) {
    CellRef cell = run.bearing().map(PileSpec::at).orElse(run.at());
    Value toe =
        Value.assumed(
            NumberText.parse(NumberText.fixed(level, 1)),
            Units.M,
            cell,
            "toe level, sized by the engine");
    WallRun placed =
        run.bearing()
            .map(piles -> run.with(piles.withToe(toe)))
            .orElseGet(() -> run.with(run.sheets().orElseThrow().withToe(toe)));
    return new Job(job.submission().with(placed), job.basis());
  }
}
