package pilefolio.checks.movement;

import java.util.List;
import java.util.Optional;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck;
import pilefolio.checks.Subject;
import pilefolio.checks.movement.WallMovements.StageMovement;
import pilefolio.model.Value;
import pilefolio.model.WallRun;
import pilefolio.trace.Binding;
import pilefolio.trace.Binding.Row;
import pilefolio.trace.Calculation;

/** Greatest horizontal displacement of the wall, stage by stage, against the limit. */
public final class WallDisplacementCheck extends RunCheck {
  /** Name of the method as sources print it. */
  static final String METHOD = "staged analysis, characteristic values";

  /** The check. */
  public WallDisplacementCheck() {
    super("wall-displacement", "Displacement of the wall", Family.MOVEMENT, MovementSheets.WALL);
  }

  @Override
  protected List<CheckResult> check(Job job, WallRun run) {
    WallMovements wall = WallMovements.of(job, run);
    Optional<Value> limit = run.analysis().displacementLimit();
    if (limit.isEmpty() && wall.stages().isEmpty()) {
      return List.of();
    }
    Subject subject = Subject.run(run.id());
    if (!wall.complete()) {
      return List.of(CheckResult.notChecked(this, subject, wall.missing()));
    }
    needed(
        limit, "the displacement allowed of run " + run.id() + " (Wall runs, Displacement limit)");
    return List.of(CheckResult.of(this, subject, calculate(wall, limit.orElseThrow())));
  }

  static Calculation calculate(WallMovements wall, Value limit) {
    Binding binding =
        MovementSheets.WALL
            .bind()
            .set("δ_lim", From.cell(limit))
            .set("z_0", From.cell(wall.run().levels().retained()));
    for (StageMovement s : wall.stages()) {
      binding.row(
          MovementSheets.STAGES,
          Row.of(s.label())
              .set("H", From.layout(s.height(), "ground level behind less excavation level"))
              .set("z_δ", From.method(s.deflection().levelOfGreatest(), METHOD))
              .set("δ_h", From.method(s.deflection().greatest(), METHOD)));
    }
    return binding.calculate();
  }
}
