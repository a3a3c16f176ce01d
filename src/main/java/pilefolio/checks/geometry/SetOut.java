package pilefolio.checks.geometry;

import java.util.Optional;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck;
import pilefolio.checks.situation.PileToes;
import pilefolio.model.Methods;
import pilefolio.model.PileKind;
import pilefolio.model.Stage;
import pilefolio.model.Value;
import pilefolio.model.WallRun;
import pilefolio.standards.ToleranceSet;
import pilefolio.trace.Binding;
import pilefolio.trace.Given;
import pilefolio.trace.Source;

/** What the geometry checks of a run have in common: diameters, spacing, tolerances, levels. */
public final class SetOut {
  private SetOut() {}

  /** Hands in the diameters and the spacing. */
  static Binding piles(Binding binding, WallRun run) {
    return binding
        .set("D_p", From.cell(run.primary().diameter()))
        .set("D_s", From.cell(run.secondary().diameter()))
        .set("s", From.cell(run.line().spacing()));
  }

  /** The tolerance set chosen. */
  static ToleranceSet set(Job job) {
    String id = job.submission().methods().toleranceSet();
    return ToleranceSet.find(id)
        .orElseThrow(
            () -> new RunCheck.MissingInput("There is no tolerance set called " + id + "."));
  }

  /** Tolerance on position at the guide wall: the user's, or that of the set. */
  public static Given position(Job job, WallRun run) {
    Optional<Value> own = job.submission().methods().positionTolerance();
    ToleranceSet set = set(job);
    double diameter = Math.max(run.primary().diameter().si(), run.secondary().diameter().si());
    return own.map(From::cell).orElseGet(() -> of(set, set.plan(diameter)));
  }

  /** Verticality as n of 1 in n: the user's, or that of the set. */
  public static Given verticality(Job job) {
    Optional<Value> own = job.submission().methods().verticalityTolerance();
    ToleranceSet set = set(job);
    return own.map(From::cell).orElseGet(() -> of(set, set.verticality()));
  }

  private static Given of(ToleranceSet set, double value) {
    return new Given(value, new Source.TableRow("tolerances", set.title()));
  }

  /** Divisor from tolerance to standard deviation. */
  static Given sigmas(Methods methods) {
    var convention =
        switch (methods.sigmaConvention()) {
          case TWO_SIDED_95 -> pilefolio.analysis.reliability.ToleranceConvention.ONE_AXIS_95;
          case TWO_SIGMA -> pilefolio.analysis.reliability.ToleranceConvention.TWO_SIGMA;
          case RADIAL_95 -> pilefolio.analysis.reliability.ToleranceConvention.RADIAL_95;
        };
    return From.layout(convention.sigmas(), convention.meaning());
  }

  /** The stage that excavates deepest before a run. */
  static Stage lowestStage(Job job, WallRun run) {
    return PileToes.lowestStage(job, run)
        .orElseThrow(
            () -> new RunCheck.MissingInput("The run has no construction stage, so no level."));
  }

  /** Toe level of one kind of pile. */
  public static Given toe(Job job, WallRun run, PileKind kind) {
    return PileToes.of(job, run, kind)
        .orElseThrow(
            () ->
                new RunCheck.MissingInput(
                    "The toe level is left to be sized and no level could be found."));
  }

  /** Depth of the level down to which the joints must stay closed, below the platform, m. */
  static double closedDepth(Job job, WallRun run) {
    return run.levels().platform().si()
        - lowestStage(job, run).excavation().si()
        + job.submission().methods().cutOffMargin().si();
  }
}
