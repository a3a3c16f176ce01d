package pilefolio.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

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
    List<PileSpec> piles = PileKind.secant().stream().map(PileLayoutTest::piles).toList();
    return run(WallType.HARD_FIRM, bearing, count, length, Optional.empty(), piles);
  }

  private static PileSpec piles(PileKind kind) {
    return new PileSpec(
        SOMEWHERE,
        kind,
        value(880, Units.MM),
        Optional.empty(),
        "M1",
        Optional.empty(),
        Optional.empty());
  }

  private static WallRun run(
      WallType type,
      double bearing,
      Optional<Value> count,
      Optional<Value> length,
      Optional<Value> members,
      List<PileSpec> piles) {
    return new WallRun(
        SOMEWHERE,
        "A",
        "north side",
        type,
        Technique.CASED_AUGER,
        false,
        new RunLine(
            value(100, Units.M),
            value(200, Units.M),
            value(bearing, Units.DEG),
            value(700, Units.MM),
            count,
            length,
            members),
        new RunLevels(value(10, Units.M), value(10.1, Units.M), value(9.2, Units.M)),
        "G1",
        true,
        Optional.empty(),
        piles,
        Optional.empty(),
        Optional.empty(),
        "R1",
        "T1",
        new RunAnalysis(
            Optional.empty(),
            value(0, Units.DEG),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            new SettlementForecast(Optional.empty(), value(1, Units.ONE))));
  }

  @Test
  void membersOfAWallWithoutPrimariesAreCounted() {
    List<PileSpec> single = List.of(piles(PileKind.SINGLE));
    Optional<Value> none = Optional.empty();
    PileLayout given =
        run(WallType.CONTIGUOUS, 90, none, none, Optional.of(value(3, Units.ONE)), single).layout();
    assertEquals(List.of("A-01", "A-02", "A-03"), given.piles().stream().map(Pile::mark).toList());
    assertEquals(101.4, given.piles().get(2).east(), 1e-9);
    PileLayout long2 =
        run(WallType.SOLDIER_TIMBER, 90, none, Optional.of(value(2.0, Units.M)), none, single)
            .layout();
    assertEquals(4, long2.piles().size());
    assertTrue(
        run(WallType.SHEET_PILES, 90, none, none, Optional.of(value(9, Units.ONE)), List.of())
            .layout()
            .piles()
            .isEmpty());
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
