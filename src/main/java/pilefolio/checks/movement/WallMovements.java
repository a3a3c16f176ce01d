package pilefolio.checks.movement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pilefolio.analysis.movement.SettlementTrough;
import pilefolio.analysis.movement.TroughShape;
import pilefolio.analysis.movement.WallDeflection;
import pilefolio.checks.Job;
import pilefolio.checks.situation.StagedDesign;
import pilefolio.checks.situation.StagedSolution;
import pilefolio.checks.situation.StagedStep;
import pilefolio.model.Stage;
import pilefolio.model.WallRun;

/**
 * Displacement of the wall of a run by stage, as the staged analysis gives it with characteristic
 * values.
 *
 * @param run the run
 * @param stages the stages in which the wall retains ground, in order of time
 * @param missing why stages are missing, as a sentence; empty if all are there
 */
public record WallMovements(WallRun run, List<StageMovement> stages, String missing) {

  /**
   * One stage.
   *
   * @param stage the stage
   * @param height retained height, m
   * @param deflection the deflected wall
   * @param soFar greatest displacement of this stage and those before it, m: ground that has
   *     settled does not rise again when anchors pull the wall back
   */
  public record StageMovement(Stage stage, double height, WallDeflection deflection, double soFar) {

    /** Label of the stage in tables. */
    public String label() {
      return "stage "
          + stage.number()
          + (stage.description().isEmpty() ? "" : ", " + stage.description());
    }

    /** Settlement of the ground in this stage. */
    public SettlementTrough trough(TroughShape shape, double ratio) {
      return SettlementTrough.ofRatio(shape, height, soFar, ratio);
    }
  }

  record Key(String run) {}

  /** Copies the list. */
  public WallMovements {
    stages = List.copyOf(stages);
  }

  /** The displacements of a run, worked out once for the whole job. */
  public static WallMovements of(Job job, WallRun run) {
    return job.shared(new Key(run.id()), WallMovements.class, j -> find(j, run));
  }

  private static WallMovements find(Job job, WallRun run) {
    StagedDesign design = StagedDesign.of(job, run);
    if (!design.asked()) {
      return unknown(
          run,
          "The movement of run "
              + run.id()
              + " is not calculated: no layer has a modulus (Ground, Subgrade modulus).");
    }
    if (design.service().isEmpty()) {
      return unknown(
          run,
          design.missing().isEmpty()
              ? "The staged analysis of run " + run.id() + " gives no displacement."
              : String.join(" ", design.missing()));
    }
    StagedSolution service = design.service().get();
    List<StageMovement> stages = new ArrayList<>();
    double soFar = 0;
    for (StagedStep step : service.complete()) {
      StageMovement movement = movement(run, step, soFar);
      soFar = movement.soFar();
      stages.add(movement);
    }
    return new WallMovements(
        run,
        stages,
        service
            .failedStage()
            .map(
                stage ->
                    "The wall of run "
                        + run.id()
                        + " has no equilibrium in stage "
                        + stage.number()
                        + ", so its movement there has no value.")
            .orElse(stages.isEmpty() ? "Run " + run.id() + " retains no ground." : ""));
  }

  private static WallMovements unknown(WallRun run, String reason) {
    return new WallMovements(run, List.of(), reason);
  }

  private static StageMovement movement(WallRun run, StagedStep step, double before) {
    WallDeflection deflection =
        new WallDeflection(
            step.state().nodes().stream()
                .map(n -> new WallDeflection.Point(n.level(), n.displacement()))
                .toList());
    return new StageMovement(
        step.stage(),
        run.levels().retained().si() - step.stage().excavation().si(),
        deflection,
        Math.max(before, deflection.greatest()));
  }

  /** True if every stage was calculated. */
  public boolean complete() {
    return missing.isEmpty() && !stages.isEmpty();
  }

  /** The stage with the greatest displacement so far; the deepest of those that share it. */
  public StageMovement worst() {
    return stages.stream()
        .max(
            Comparator.comparingDouble(StageMovement::soFar)
                .thenComparingDouble(StageMovement::height))
        .orElseThrow();
  }

  /** The shape of settlement that the user chose for the run. */
  public Optional<TroughShape> shape() {
    return run.analysis().settlement().shape().map(s -> TroughShape.valueOf(s.name()));
  }

  /** Greatest settlement over greatest displacement. */
  public double ratio() {
    return run.analysis().settlement().ratio().si();
  }
}
