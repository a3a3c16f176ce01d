package pilefolio.submittal.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import pilefolio.analysis.movement.SettlementTrough;
import pilefolio.checks.movement.NeighbourMovement;
import pilefolio.checks.movement.NeighbourMovement.AtStage;
import pilefolio.checks.movement.WallMovements;
import pilefolio.checks.movement.WallMovements.StageMovement;
import pilefolio.model.WallRun;
import pilefolio.submittal.Submittal;
import pilefolio.submittal.figure.Curve.Point;
import pilefolio.submittal.figure.Curve.Role;
import pilefolio.submittal.figure.TroughData.Beside;
import pilefolio.units.Units;

/** The settlement trough of a run in its worst stage and in the two that come next. */
final class Troughs {
  private static final int STEPS = 96;
  private static final int MOST = 3;
  private static final double ROOM = 1.1;
  private static final int MOST_NEIGHBOURS = 8;

  private Troughs() {}

  /** The figure; empty if the movement of the wall or the shape is not known. */
  static Optional<TroughData> of(Submittal submittal, WallRun run) {
    WallMovements wall = WallMovements.of(submittal.job(), run);
    if (!wall.complete() || wall.shape().isEmpty()) {
      return Optional.empty();
    }
    DrawingUnits units = new DrawingUnits(submittal.system());
    List<StageMovement> stages =
        wall.stages().stream()
            .sorted(
                Comparator.comparingDouble(StageMovement::soFar)
                    .thenComparingDouble(StageMovement::height)
                    .reversed())
            .limit(MOST)
            .toList();
    List<SettlementTrough> troughs =
        stages.stream().map(s -> s.trough(wall.shape().get(), wall.ratio())).toList();
    double far = troughs.stream().mapToDouble(SettlementTrough::reach).max().orElseThrow() * ROOM;
    List<NeighbourMovement> beside =
        NeighbourMovement.all(submittal.job()).stream()
            .filter(m -> m.run().id().equals(run.id()) && m.known())
            .sorted(Comparator.comparingDouble(m -> m.neighbour().distance().si()))
            .toList();
    List<NeighbourMovement> drawn =
        beside.stream().filter(m -> m.neighbour().distance().si() < far).toList();
    return Optional.of(
        new TroughData(
            "trough-" + run.id(),
            caption(run, stages, beside, drawn),
            units.scale("Distance from the wall", Units.M),
            units.scale("Settlement", Units.MM),
            curves(units, stages, troughs, far),
            drawn.stream().limit(MOST_NEIGHBOURS).map(m -> beside(units, m, far)).toList(),
            units.metres(far)));
  }

  private static String caption(
      WallRun run,
      List<StageMovement> stages,
      List<NeighbourMovement> beside,
      List<NeighbourMovement> drawn) {
    StringBuilder text =
        new StringBuilder("Settlement of the ground behind run " + run.id() + ", greatest in ");
    text.append("stage ").append(stages.get(0).stage().number());
    text.append(". Settlement is drawn larger than distance.");
    for (NeighbourMovement m : beside) {
      if (!drawn.contains(m)) {
        text.append(" Beyond the trough: ").append(m.neighbour().name()).append('.');
      }
    }
    return text.toString();
  }

  private static List<Curve> curves(
      DrawingUnits units, List<StageMovement> stages, List<SettlementTrough> troughs, double far) {
    Role[] roles = {Role.MAIN, Role.SECOND, Role.THIRD};
    List<Curve> curves = new ArrayList<>();
    // The worst stage is drawn last, on top.
    for (int i = stages.size() - 1; i >= 0; i--) {
      SettlementTrough trough = troughs.get(i);
      TreeSet<Double> places = new TreeSet<>();
      trough.shape().bends().forEach(r -> places.add(r * trough.height()));
      for (int k = 0; k <= STEPS; k++) {
        places.add(far * k / STEPS);
      }
      curves.add(
          new Curve(
              "stage " + stages.get(i).stage().number(),
              roles[i],
              places.stream()
                  .filter(x -> x <= far)
                  .map(x -> new Point(units.metres(x), units.of(trough.settlementAt(x), Units.MM)))
                  .toList()));
    }
    return curves;
  }

  private static Beside beside(DrawingUnits units, NeighbourMovement m, double far) {
    AtStage worst = m.worst();
    double near = m.neighbour().distance().si();
    double end = Math.min(far, m.neighbour().farSide());
    double peak = worst.trough().shape().peak() * worst.trough().height();
    return new Beside(
        DrawingUnits.words(m.neighbour().name()) + ", " + units.text(worst.settlement(), Units.MM),
        m.neighbour().building(),
        units.metres(near),
        units.metres(end),
        units.metres(Math.min(end, Math.max(near, peak))),
        units.of(worst.settlement(), Units.MM));
  }
}
