package pilefolio.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import pilefolio.checks.situation.RunDesign;
import pilefolio.model.Assumption;
import pilefolio.model.PileSpec;
import pilefolio.model.Submission;
import pilefolio.model.Value;
import pilefolio.model.WallRun;
import pilefolio.trace.Verdict.Result;
import pilefolio.units.NumberText;
import pilefolio.units.Unit;
import pilefolio.units.Units;

/**
 * Finds the toe levels of secondaries that the user leaves to the engine: the least deep level, on
 * whole decimetres, at which the wall is in equilibrium with its margin and the piles carry.
 */
public final class ToeSizing {
  private static final double STEP = 0.1;

  private ToeSizing() {}

  /**
   * The job with a toe level for every run that can be given one; the levels found are listed among
   * the assumptions with what governed them. A run without equilibrium is left as it is, and its
   * checks say why.
   */
  public static Job sized(Job job) {
    Job sized = job;
    for (WallRun run : job.submission().runs()) {
      if (run.secondary().toe().isEmpty()) {
        sized = sized(sized, run);
      }
    }
    return sized;
  }

  private static Job sized(Job job, WallRun run) {
    OptionalDouble equilibrium = RunDesign.of(job, run).toe();
    if (equilibrium.isEmpty()) {
      return job;
    }
    double base = job.submission().profile(run).base().si();
    String governed = "embedment";
    boolean deeper = false;
    for (double toe = equilibrium.getAsDouble(); toe >= base - 1e-9; toe -= STEP) {
      double level = Math.rint(toe / STEP) * STEP;
      Job candidate = with(job, run, level, governed);
      Set<Result> results = capacity(candidate, run);
      boolean unknown = results.contains(Result.NOT_CHECKED);
      if (!results.contains(Result.NOT_SATISFIED) && !(unknown && deeper)) {
        return candidate;
      }
      if (unknown) {
        // Down here capacity cannot be told any more, as near the end of the known ground.
        break;
      }
      governed = "vertical capacity";
      deeper = true;
    }
    // No level carries within the known ground: show the wall's own toe and let the check fail.
    return with(job, run, equilibrium.getAsDouble(), "embedment");
  }

  private static Set<Result> capacity(Job job, WallRun run) {
    return Checks.ALL.stream()
        .filter(check -> check.family() == Family.PILE)
        .flatMap(check -> check.run(job).stream())
        .filter(result -> result.subject().run().equals(run.id()))
        .map(result -> result.verdict().result())
        .collect(Collectors.toSet());
  }

  private static Job with(Job job, WallRun run, double level, String governed) {
    Submission s = job.submission();
    Value toe =
        Value.assumed(
            NumberText.parse(NumberText.fixed(level, 1)),
            Units.M,
            run.secondary().at(),
            "toe level, sized by the engine");
    PileSpec piles = run.secondary();
    PileSpec secondary =
        new PileSpec(
            piles.at(),
            piles.kind(),
            piles.diameter(),
            Optional.of(toe),
            piles.mix(),
            piles.beam(),
            piles.load());
    WallRun sized =
        new WallRun(
            run.at(),
            run.id(),
            run.description(),
            run.interlock(),
            run.technique(),
            run.permanent(),
            run.line(),
            run.levels(),
            run.profile(),
            run.guideWall(),
            run.batter(),
            run.primary(),
            secondary,
            run.support(),
            run.unplannedExcavation(),
            run.rig(),
            run.tool());
    List<WallRun> runs = new ArrayList<>();
    s.runs().forEach(r -> runs.add(r.id().equals(run.id()) ? sized : r));
    Unit shown = s.project().documentUnits().of(Units.M);
    List<Assumption> assumptions = new ArrayList<>(s.assumptions());
    assumptions.add(
        new Assumption(
            toe.cell(),
            "toe level of the secondaries",
            "run " + run.id(),
            NumberText.fixed(shown.fromSi(toe.si()), 2)
                + " "
                + shown.symbol()
                + ", the least that suffices; governed by "
                + governed));
    return new Job(
        new Submission(
            s.project(),
            s.basis(),
            s.methods(),
            s.profiles(),
            runs,
            s.stages(),
            s.supports(),
            s.beams(),
            s.mixes(),
            s.rigs(),
            s.tools(),
            s.supply(),
            s.crews(),
            s.calendar(),
            s.neighbours(),
            s.monitoring(),
            s.people(),
            s.revisions(),
            assumptions),
        job.basis());
  }
}
