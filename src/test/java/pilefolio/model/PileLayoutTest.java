package pilefolio.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pilefolio.findings.CellRef;
import pilefolio.units.Unit;
import pilefolio.units.Units;

class PileLayoutTest {
  private static final CellRef SOMEWHERE = new CellRef("Runs", 4, 1);

  private static Value value(double number, Unit unit) {
    return Value.entered(number, unit, SOMEWHERE, "test");
  }

  private static WallRun run(double bearing, Optional<Value> count, Optional<Value> length) {
    PileSpec piles =
        new PileSpec(
            SOMEWHERE,
            PileKind.PRIMARY,
            value(880, Units.MM),
            Optional.empty(),
            "M1",
            Optional.empty(),
            Optional.empty());
    return new WallRun(
        SOMEWHERE,
        "A",
        "north side",
        Interlock.HARD_FIRM,
        Technique.CASED_AUGER,
        false,
        new RunLine(
            value(100, Units.M),
            value(200, Units.M),
            value(bearing, Units.DEG),
            value(700, Units.MM),
            count,
            length),
        new RunLevels(value(10, Units.M), value(10.1, Units.M), value(9.2, Units.M)),
        "G1",
        true,
        Optional.empty(),
        piles,
        piles,
        Optional.empty(),
        Optional.empty(),
        "R1",
        "T1");
  }

  @Test
  void beginsAndEndsWithAPrimary() {
    PileLayout layout = run(90, Optional.of(value(3, Units.ONE)), Optional.empty()).layout();
    assertEquals(
        List.of("A-P01", "A-S01", "A-P02", "A-S02", "A-P03", "A-S03", "A-P04"),
        layout.piles().stream().map(Pile::mark).toList());
    assertEquals(6, layout.joints());
  }

  @Test
  void eastwardRunGainsEastingOnly() {
    Pile last = run(90, Optional.of(value(3, Units.ONE)), Optional.empty()).layout().piles().get(6);
    assertEquals(104.2, last.east(), 1e-12);
    assertEquals(200, last.north(), 1e-12);
    assertEquals(4.2, last.distance(), 1e-12);
  }

  @Test
  void bearingIsClockwiseFromNorth() {
    Pile second =
        run(30, Optional.of(value(3, Units.ONE)), Optional.empty()).layout().piles().get(1);
    assertEquals(100.35, second.east(), 1e-12);
    assertEquals(200 + 0.7 * Math.sqrt(3) / 2, second.north(), 1e-12);
  }

  @Test
  void lengthIsCoveredByTheFewestPiles() {
    assertEquals(
        10, run(0, Optional.empty(), Optional.of(value(14, Units.M))).line().secondaryCount());
    assertEquals(
        11, run(0, Optional.empty(), Optional.of(value(14.1, Units.M))).line().secondaryCount());
  }

  @Test
  void neighboursOfAnEndPileAreOne() {
    PileLayout layout = run(0, Optional.of(value(3, Units.ONE)), Optional.empty()).layout();
    assertEquals(
        List.of("A-S01"),
        layout.neighbours(layout.piles().get(0)).stream().map(Pile::mark).toList());
    assertEquals(
        List.of("A-P02", "A-P03"),
        layout.neighbours(layout.piles().get(3)).stream().map(Pile::mark).toList());
  }
}
