package pilefolio.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import pilefolio.checks.situation.RunDesign;
import pilefolio.findings.CellRef;
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
      if (run.toe().isEmpty()) {
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
    CellRef at = run.bearing().map(PileSpec::at).orElse(run.at());
    Value toe =
        Value.assumed(
            NumberText.parse(NumberText.fixed(level, 1)),
            Units.M,
            at,
            "toe level, sized by the engine");
    WallRun sized =
        run.bearing()
            .map(piles -> run.with(piles.withToe(toe)))
            .orElseGet(() -> run.with(run.sheets().orElseThrow().withToe(toe)));
    Unit shown = s.project().documentUnits().of(Units.M);
    List<Assumption> assumptions = new ArrayList<>(s.assumptions());
    assumptions.add(
        new Assumption(
            toe.cell(),
            run.type().secant() ? "toe level of the secondaries" : "toe level",
            "run " + run.id(),
            NumberText.fixed(shown.fromSi(toe.si()), 2)
                + " "
                + shown.symbol()
                + ", the least that suffices; governed by "
                + governed));
    return new Job(s.with(sized).withAssumptions(assumptions), job.basis());
  }
}
