package pilefolio.checks.movement;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import pilefolio.analysis.movement.TroughShape;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck;
import pilefolio.checks.Subject;
import pilefolio.checks.movement.WallMovements.StageMovement;
import pilefolio.model.WallRun;
import pilefolio.trace.Binding;
import pilefolio.trace.Binding.Row;
import pilefolio.trace.Calculation;
import pilefolio.trace.Source;

/** Settlement of the ground behind a wall with distance, in the stage in which it moves most. */
public final class GroundSettlement extends RunCheck {

  /** The check. */
  public GroundSettlement() {
    super(
        "ground-settlement",
        "Settlement of the ground behind",
        Family.MOVEMENT,
        TroughFormula.all(MovementSheets.GROUND));
  }

  @Override
  public boolean derivation() {
    return true;
  }

  @Override
  protected List<CheckResult> check(Job job, WallRun run) {
    WallMovements wall = WallMovements.of(job, run);
    Optional<TroughShape> shape = wall.shape();
    if (shape.isEmpty()) {
      return List.of();
    }
    if (!wall.complete()) {
      return List.of(CheckResult.notChecked(this, Subject.run(run.id()), wall.missing()));
    }
    StageMovement worst = wall.worst();
    // No stage in the subject: the stage is the one of the wall's greatest displacement, and a
    // derivation that names a stage would be taken for one of the strength situations.
    return List.of(
        CheckResult.of(this, Subject.run(run.id()), calculate(wall, worst, shape.get())));
  }

  static Calculation calculate(WallMovements wall, StageMovement stage, TroughShape shape) {
    String label = "retained height of stage " + stage.stage().number();
    Binding binding =
        MovementSheets.GROUND
            .get(shape)
            .bind()
            .set("H", From.layout(stage.height(), label))
            .set("δ_h", stage.soFar(), displacement(stage))
            .set("R_v", From.cell(wall.run().analysis().settlement().ratio()))
            .set("V_w", From.method(stage.deflection().volume(), WallDisplacementCheck.METHOD));
    TreeSet<Double> ratios = new TreeSet<>(shape.bends());
    for (double r = 0; r <= shape.reach() + 1e-9; r += 0.5) {
      ratios.add(r);
    }
    for (double r : ratios) {
      binding.row(
          MovementSheets.PLACES,
          Row.of(r == 0 ? "at the wall" : String.format(Locale.ROOT, "%s H", plain(r)))
              .set("r", From.layout(r, "place chosen")));
    }
    return binding.calculate();
  }

  /** Where the displacement of a stage is printed. */
  static Source displacement(StageMovement stage) {
    return new Source.Line(
        "wall-displacement",
        "Displacement of the wall, greatest up to stage " + stage.stage().number(),
        "δ_h");
  }

  private static String plain(double r) {
    return r == Math.rint(r) ? String.valueOf((long) r) : String.valueOf(r);
  }
}
