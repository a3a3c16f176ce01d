package pilefolio.model;

import java.util.Optional;
import pilefolio.findings.CellRef;

/**
 * One straight run of secant wall with one set of levels and one kind of pile each.
 *
 * @param at the first cell of the row
 * @param id short name, the first part of the pile marks
 * @param description where it stands, in words
 * @param interlock kind of secant wall
 * @param technique how the piles are bored
 * @param permanent true if the wall stays in service after the works
 * @param line setting out in plan
 * @param levels levels
 * @param profile id of the ground profile
 * @param guideWall true if piles are bored through a guide wall
 * @param batter n of a batter 1 horizontal in n vertical; absent means vertical
 * @param primary what the primaries have in common
 * @param secondary what the secondaries have in common
 * @param support id of the support; absent means a cantilever
 * @param unplannedExcavation allowance for excavation below plan, a length; absent means as the
 *     design basis has it
 * @param rig id of the rig
 * @param tool id of the tool
 */
public record WallRun(
    CellRef at,
    String id,
    String description,
    Interlock interlock,
    Technique technique,
    boolean permanent,
    RunLine line,
    RunLevels levels,
    String profile,
    boolean guideWall,
    Optional<Value> batter,
    PileSpec primary,
    PileSpec secondary,
    Optional<String> support,
    Optional<Value> unplannedExcavation,
    String rig,
    String tool) {

  /** The primaries' or the secondaries' common data. */
  public PileSpec piles(PileKind kind) {
    return kind == PileKind.PRIMARY ? primary : secondary;
  }

  /** The piles of the run from its start to its end. */
  public PileLayout layout() {
    return PileLayout.of(this);
  }
}
