package pilefolio.submittal.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import pilefolio.model.WallRun;
import pilefolio.submittal.Submittal;
import pilefolio.trace.Calculation;
import pilefolio.trace.Calculation.RowValues;
import pilefolio.units.Units;

/** Overlap with depth, from the check of the overlap worked out at many levels. */
final class JointOverlaps {
  static final String CHECK = "joint-overlap";
  private static final int STEPS = 60;

  private JointOverlaps() {}

  static Optional<JointOverlapData> of(Submittal submittal, WallRun run) {
    return Results.of(submittal, CHECK, run.id())
        .flatMap(result -> Results.sheet(result, "c_0"))
        .map(sheet -> figure(new DrawingUnits(submittal.system()), run, sheet));
  }

  private static JointOverlapData figure(DrawingUnits units, WallRun run, Calculation sheet) {
    double platform = sheet.value("L_P");
    double deepest = Math.max(sheet.value("z_T"), sheet.value("z_r"));
    List<Double> levels = new ArrayList<>();
    for (int i = 0; i <= STEPS; i++) {
      levels.add(platform - deepest * i / STEPS);
    }
    List<RowValues> rows = SheetSweep.rows(sheet, "levels", "L", levels);
    double lost = sheet.value("z_w");
    boolean isLost = lost <= deepest;
    List<Mark> depths = new ArrayList<>();
    depths.add(depth(units, "cut-off", platform - run.levels().cutOff().si()));
    depths.add(depth(units, "excavation", platform - sheet.value("L_e")));
    depths.add(depth(units, "joints closed to", sheet.value("z_r")));
    depths.add(depth(units, "toe of primaries", sheet.value("z_T")));
    return new JointOverlapData(
        "overlap-" + run.id(),
        "Overlap left between neighbouring piles of run "
            + run.id()
            + " against depth below the guide wall.",
        units.scale("Overlap", Units.MM),
        units.scale("Depth below guide wall", Units.M),
        units.of(sheet.value("c_0"), Units.MM),
        curve(units, "both piles lean apart", Curve.Role.MAIN, rows, r -> r.values().get("c_w")),
        curve(units, "root-sum-square", Curve.Role.SECOND, rows, r -> r.values().get("c_q")),
        units.of(sheet.value("c_min"), Units.MM),
        "required " + units.text(sheet.value("c_min"), Units.MM),
        depths,
        isLost ? "contact lost " + units.text(lost, Units.M) : "",
        isLost ? units.metres(lost) : 0);
  }

  private static Mark depth(DrawingUnits units, String words, double si) {
    return new Mark(units.metres(si), words + " " + units.text(si, Units.M));
  }

  private static Curve curve(
      DrawingUnits units,
      String name,
      Curve.Role role,
      List<RowValues> rows,
      ToDoubleFunction<RowValues> overlap) {
    return new Curve(
        name,
        role,
        rows.stream()
            .map(
                row ->
                    new Curve.Point(
                        units.of(overlap.applyAsDouble(row), Units.MM),
                        units.metres(row.values().get("z"))))
            .toList());
  }
}
