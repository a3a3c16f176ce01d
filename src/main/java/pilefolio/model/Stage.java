package pilefolio.model;

import java.util.List;
import java.util.Optional;
import pilefolio.findings.CellRef;

/**
 * One stage of the excavation before a wall run.
 *
 * @param at the first cell of the row
 * @param run id of the run
 * @param number counted from 1 in the order of the works
 * @param description what is done
 * @param excavation level in front of the wall, an elevation, without unplanned excavation
 * @param waterBehind water level behind the wall, an elevation; absent means none
 * @param waterFront water level in front, an elevation; absent means none
 * @param permanentSurcharge behind the wall, a pressure
 * @param variableSurcharge behind the wall, a pressure
 * @param supports ids of the supports in place
 * @param conditions what else is true of the stage
 */
public record Stage(
    CellRef at,
    String run,
    int number,
    String description,
    Value excavation,
    Optional<Value> waterBehind,
    Optional<Value> waterFront,
    Value permanentSurcharge,
    Value variableSurcharge,
    List<String> supports,
    StageConditions conditions) {

  /** Copies the list. */
  public Stage {
    supports = List.copyOf(supports);
  }
}
