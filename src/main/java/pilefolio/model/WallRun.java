package pilefolio.model;

import java.util.List;
import java.util.Optional;
import pilefolio.findings.CellRef;

/**
 * One straight run of wall with one set of levels.
 *
 * @param at the first cell of the row
 * @param id short name, the first part of the pile marks
 * @param description where it stands, in words
 * @param type what the wall consists of
 * @param technique how the piles are bored
 * @param permanent true if the wall stays in service after the works
 * @param line setting out in plan
 * @param levels levels
 * @param profile id of the ground profile
 * @param guideWall true if piles are bored through a guide wall
 * @param batter n of a batter 1 horizontal in n vertical; absent means vertical
 * @param piles what the piles of each kind have in common: primaries and secondaries of a secant
 *     wall, single piles or beams of another
 * @param sheets sheet piles, if it has any
 * @param unplannedExcavation allowance for excavation below plan, a length; absent means as the
 *     design basis has it
 * @param rig id of the rig
 * @param tool id of the tool; empty if none is needed
 * @param analysis what its analysis needs beside the geometry
 * @param beams how soldier beams or king piles stand, and what is between them
 */
public record WallRun(
    CellRef at,
    String id,
    String description,
    WallType type,
    Technique technique,
    boolean permanent,
    RunLine line,
    RunLevels levels,
    String profile,
    boolean guideWall,
    Optional<Value> batter,
    List<PileSpec> piles,
    Optional<SheetPiling> sheets,
    Optional<Value> unplannedExcavation,
    String rig,
    String tool,
    RunAnalysis analysis,
    BeamsInGround beams) {

  /** Copies the list. */
  public WallRun {
    piles = List.copyOf(piles);
  }

  /** A run that says nothing of soldier beams. */
  public WallRun(
      CellRef at,
      String id,
      String description,
      WallType type,
      Technique technique,
      boolean permanent,
      RunLine line,
      RunLevels levels,
      String profile,
      boolean guideWall,
      Optional<Value> batter,
      List<PileSpec> piles,
      Optional<SheetPiling> sheets,
      Optional<Value> unplannedExcavation,
      String rig,
      String tool,
      RunAnalysis analysis) {
    this(
        at,
        id,
        description,
        type,
        technique,
        permanent,
        line,
        levels,
        profile,
        guideWall,
        batter,
        piles,
        sheets,
        unplannedExcavation,
        rig,
        tool,
        analysis,
        BeamsInGround.USUAL);
  }

  /**
   * The piles of a kind.
   *
   * @throws IllegalStateException if the wall has none
   */
  public PileSpec piles(PileKind kind) {
    return find(kind)
        .orElseThrow(() -> new IllegalStateException("run " + id + " has no " + kind.label()));
  }

  /** The piles of a kind, if the wall has them. */
  public Optional<PileSpec> find(PileKind kind) {
    return piles.stream().filter(p -> p.kind() == kind).findFirst();
  }

  /** The primaries of a secant wall. */
  public PileSpec primary() {
    return piles(PileKind.PRIMARY);
  }

  /** The secondaries of a secant wall. */
  public PileSpec secondary() {
    return piles(PileKind.SECONDARY);
  }

  /** The piles or beams that carry: secondaries or single piles; empty for sheet piles. */
  public Optional<PileSpec> bearing() {
    return find(PileKind.SECONDARY).or(() -> find(PileKind.SINGLE));
  }

  /** Toe level of the wall; empty if it is to be sized. */
  public Optional<Value> toe() {
    return bearing().flatMap(PileSpec::toe).or(() -> sheets.flatMap(SheetPiling::toe));
  }

  /** The same run with other piles of one kind. */
  public WallRun with(PileSpec other) {
    return new WallRun(
        at,
        id,
        description,
        type,
        technique,
        permanent,
        line,
        levels,
        profile,
        guideWall,
        batter,
        piles.stream().map(p -> p.kind() == other.kind() ? other : p).toList(),
        sheets,
        unplannedExcavation,
        rig,
        tool,
        analysis,
        beams);
  }

  /** The same run with other sheet piles. */
  public WallRun with(SheetPiling other) {
    return new WallRun(
        at,
        id,
        description,
        type,
        technique,
        permanent,
        line,
        levels,
        profile,
        guideWall,
        batter,
        piles,
        Optional.of(other),
        unplannedExcavation,
        rig,
        tool,
        analysis,
        beams);
  }

  /** The same run on another line. */
  public WallRun with(RunLine other) {
    return new WallRun(
        at,
        id,
        description,
        type,
        technique,
        permanent,
        other,
        levels,
        profile,
        guideWall,
        batter,
        piles,
        sheets,
        unplannedExcavation,
        rig,
        tool,
        analysis,
        beams);
  }

  /** The same run with another allowance for excavation below plan. */
  public WallRun withUnplannedExcavation(Value allowance) {
    return new WallRun(
        at,
        id,
        description,
        type,
        technique,
        permanent,
        line,
        levels,
        profile,
        guideWall,
        batter,
        piles,
        sheets,
        Optional.of(allowance),
        rig,
        tool,
        analysis,
        beams);
  }

  /** The same run with other values of its analysis. */
  public WallRun with(RunAnalysis other) {
    return new WallRun(
        at,
        id,
        description,
        type,
        technique,
        permanent,
        line,
        levels,
        profile,
        guideWall,
        batter,
        piles,
        sheets,
        unplannedExcavation,
        rig,
        tool,
        other,
        beams);
  }

  /** The same run with no entry for unplanned excavation. */
  public WallRun withoutUnplannedExcavation() {
    return new WallRun(
        at,
        id,
        description,
        type,
        technique,
        permanent,
        line,
        levels,
        profile,
        guideWall,
        batter,
        piles,
        sheets,
        Optional.empty(),
        rig,
        tool,
        analysis,
        beams);
  }

  /** The piles of the run from its start to its end; none for sheet piles. */
  public PileLayout layout() {
    return PileLayout.of(this);
  }
}
