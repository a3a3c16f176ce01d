package pilefolio.model;

import java.util.Optional;
import pilefolio.findings.CellRef;

/**
 * A local load on the ground behind a wall.
 *
 * @param at row
 * @param id name of the load
 * @param run wall run
 * @param kind shape
 * @param distance from the back of the wall to the near edge, or to the line or point, m
 * @param width of a strip or footing, across the wall, m
 * @param length of a footing, along the wall, m
 * @param level level it acts at, m
 * @param pressure of a strip or footing, Pa
 * @param lineLoad of a line, N/m
 * @param force of a point, N
 * @param offset of a point or footing along the wall from the section considered, m
 * @param variable true for a variable load
 * @param firstStage first stage in which it acts; from the start if empty
 * @param lastStage last stage in which it acts; to the end if empty
 */
public record LocalLoad(
    CellRef at,
    String id,
    String run,
    LoadKind kind,
    Value distance,
    Optional<Value> width,
    Optional<Value> length,
    Value level,
    Optional<Value> pressure,
    Optional<Value> lineLoad,
    Optional<Value> force,
    Optional<Value> offset,
    boolean variable,
    Optional<Value> firstStage,
    Optional<Value> lastStage) {

  /** True if the load acts in a stage. */
  public boolean actsIn(Stage stage) {
    return firstStage.map(v -> v.si() <= stage.number()).orElse(true)
        && lastStage.map(v -> stage.number() <= v.si()).orElse(true);
  }
}
