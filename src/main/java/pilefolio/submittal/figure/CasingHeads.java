package pilefolio.submittal.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import pilefolio.checks.CheckResult;
import pilefolio.model.WallRun;
import pilefolio.submittal.Answer;
import pilefolio.submittal.Submittal;
import pilefolio.submittal.figure.Curve.Point;
import pilefolio.submittal.figure.Curve.Role;
import pilefolio.trace.Calculation;
import pilefolio.units.Units;

/**
 * How high the shoe of the casing may stand while a secondary is filled: the concrete less the head
 * that is kept over the shoe. Cased piles below groundwater only, as the check of that head.
 */
final class CasingHeads {
  static final String CHECK = "casing-head";
  private static final String VOLUME = "concrete-volume";
  private static final String LEVELS = "levels";
  private static final String PILES = "secondaries";
  private static final int STEPS = 40;

  private CasingHeads() {}

  static Optional<ConcreteHeadData> of(Submittal submittal, WallRun run) {
    Optional<Calculation> head = sheet(submittal, CHECK, "h_c", run);
    Optional<Calculation> volume = sheet(submittal, VOLUME, "V_a", run);
    Optional<Calculation> levels = sheet(submittal, LEVELS, "L_P", run);
    if (head.isEmpty() || volume.isEmpty() || levels.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        figure(new DrawingUnits(submittal.system()), run, head.get(), volume.get(), levels.get()));
  }

  private static Optional<Calculation> sheet(
      Submittal submittal, String check, String symbol, WallRun run) {
    return submittal.answers(check).stream()
        .map(Answer::result)
        .filter(r -> r.subject().run().equals(run.id()) && r.subject().piles().equals(PILES))
        .map((CheckResult r) -> Results.sheet(r, symbol))
        .flatMap(Optional::stream)
        .findFirst();
  }

  private static ConcreteHeadData figure(
      DrawingUnits units, WallRun run, Calculation head, Calculation volume, Calculation levels) {
    double toe = head.value("L_T");
    double kept = head.value("h_c");
    double water = head.value("L_W");
    double length = volume.value("l_c");
    List<Point> concrete = new ArrayList<>();
    List<Point> shoe = new ArrayList<>();
    concrete.add(new Point(0, units.metres(toe)));
    shoe.add(new Point(0, units.metres(toe)));
    TreeSet<Double> filledTo = new TreeSet<>();
    for (int i = 1; i <= STEPS; i++) {
      filledTo.add(length * i / STEPS);
    }
    filledTo.add(Math.min(kept, length));
    for (double filled : filledTo) {
      double placed = units.of(SheetSweep.given(volume, "l_c", filled).value("V_a"), Units.M3);
      concrete.add(new Point(placed, units.metres(toe + filled)));
      shoe.add(new Point(placed, units.metres(toe + Math.max(0, filled - kept))));
    }
    double all = units.of(volume.value("V_a"), Units.M3);
    return new ConcreteHeadData(
        "head-" + run.id(),
        "Concrete and casing shoe while a secondary of run "
            + run.id()
            + " is filled, overbreak spread evenly. The shoe is never above its line, so that "
            + units.text(kept, Units.M)
            + " of concrete stand over it until the bore is full.",
        units.scale("Concrete placed", Units.M3),
        units.scale("Level", Units.M),
        List.of(
            new Curve("top of concrete", Role.MAIN, concrete),
            new Curve("shoe at its highest", Role.LIMIT, shoe),
            new Curve(
                "groundwater",
                Role.WATER,
                List.of(new Point(0, units.metres(water)), new Point(all, units.metres(water))))),
        List.of(
            units.level("platform", levels.value("L_P")),
            units.level("cast to", toe + length),
            units.level("groundwater", water),
            units.level("toe", toe)));
  }
}
