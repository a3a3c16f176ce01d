package pilefolio.checks.stability;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pilefolio.analysis.staged.Failure;
import pilefolio.analysis.staged.Mechanism;
import pilefolio.analysis.staged.StageState;
import pilefolio.analysis.staged.StagedOutcome;
import pilefolio.analysis.staged.StagedWall;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck;
import pilefolio.checks.Subject;
import pilefolio.checks.situation.StagedDesign;
import pilefolio.checks.situation.StagedSolution;
import pilefolio.checks.situation.StagedStep;
import pilefolio.model.WallRun;
import pilefolio.trace.Calculation;
import pilefolio.trace.Source;

/** Whether the wall stands in every stage, with springs of the ground on both sides. */
public final class StagedEquilibrium extends RunCheck {
  private static final double KILO = 1000;

  /** The check. */
  public StagedEquilibrium() {
    super(
        "staged-equilibrium",
        "Equilibrium of the wall in stages",
        Family.STABILITY,
        StagedSheets.FREE,
        StagedSheets.SUPPORTED,
        StagedSheets.TURNS,
        StagedSheets.SLIDES,
        StagedSheets.TOO_FAR);
  }

  @Override
  protected List<CheckResult> check(Job job, WallRun run) {
    StagedDesign design = StagedDesign.of(job, run);
    if (!design.asked()) {
      return List.of();
    }
    if (!design.missing().isEmpty()) {
      throw new MissingInput(String.join(" ", design.missing()));
    }
    List<CheckResult> results = new ArrayList<>();
    for (StagedSolution solution : design.solutions()) {
      for (StagedStep step : solution.complete()) {
        results.add(
            CheckResult.of(
                this, subject(run, solution, step.stage().number()), calculate(step.state())));
      }
      solution.collapse().ifPresent(c -> results.add(failed(run, solution, c)));
    }
    return results;
  }

  private static Subject subject(WallRun run, StagedSolution solution, int stage) {
    return Subject.run(run.id()).stage("stage " + stage).combination(solution.combination().id());
  }

  private CheckResult failed(
      WallRun run, StagedSolution solution, StagedOutcome.Collapsed collapse) {
    Subject subject = subject(run, solution, solution.failedStage().orElseThrow().number());
    return collapse(collapse, solution.wall())
        .map(c -> CheckResult.of(this, subject, c))
        .orElseGet(
            () ->
                CheckResult.notChecked(
                    this, subject, "In " + collapse.stage() + " " + collapse.reason() + "."));
  }

  /** Fills the sheet of a stage in equilibrium. */
  public static Calculation calculate(StageState state) {
    return new StagedRows(state).equilibrium();
  }

  /** Fills the sheet of a stage that fails; empty if no mechanism was found. */
  public static Optional<Calculation> collapse(StagedOutcome.Collapsed collapse, StagedWall wall) {
    Failure f = collapse.failure();
    Source how =
        new Source.Method(
            String.format(
                Locale.ROOT,
                "%s: %s%s",
                collapse.stage(),
                collapse.reason(),
                f.pivot() == 0 || collapse.mechanism() == Mechanism.TRANSLATION
                    ? ""
                    : String.format(Locale.ROOT, "; moments about level %.2f m", f.pivot())));
    if (collapse.mechanism() == Mechanism.DISPLACEMENT_BEYOND_LIMIT) {
      return Optional.of(
          StagedSheets.TOO_FAR
              .bind()
              .set("L", From.layout(wall.topLevel() - wall.toeLevel(), "top to toe"))
              .set(
                  "f_l",
                  From.layout(
                      wall.displacementLimit() / (wall.topLevel() - wall.toeLevel()), "taken"))
              .set("y", f.driving(), how)
              .calculate());
    }
    // So near the limit load that the iteration cannot tell.
    if (!(f.driving() > f.resisting())) {
      return Optional.empty();
    }
    if (collapse.mechanism() == Mechanism.TRANSLATION) {
      return Optional.of(
          StagedSheets.SLIDES
              .bind()
              .set("H_d", KILO * f.driving(), how)
              .set("H_r", KILO * f.resisting(), how)
              .calculate());
    }
    return Optional.of(
        StagedSheets.TURNS
            .bind()
            .set("M_d", KILO * f.driving(), how)
            .set("M_r", KILO * f.resisting(), how)
            .calculate());
  }
}
