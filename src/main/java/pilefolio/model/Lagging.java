package pilefolio.model;

import java.util.Optional;
import pilefolio.findings.CellRef;

/**
 * What stands between the soldier beams of a run.
 *
 * @param at the first cell of the row
 * @param ground class of ground for the table of timber lagging
 * @param thickness nominal thickness of boards or shotcrete, a length
 * @param undersize by how much boards run under it, a length
 * @param bendingStrength of timber, a pressure: reference value on an allowable-stress basis,
 *     characteristic otherwise
 * @param shearStrength of timber, likewise
 * @param modification product of the adjustment factors of timber, or its modification factor
 * @param concreteStrength cylinder strength of shotcrete when it is loaded, a pressure
 * @param mesh reinforcement of shotcrete across the span, m²/m; absent means plain
 * @param meshDepth depth of that reinforcement from the compressed face, a length
 * @param meshYield its yield strength, a pressure
 * @param lift greatest height of face that stands without lagging, a length
 */
public record Lagging(
    CellRef at,
    Optional<LaggingGround> ground,
    Value thickness,
    Value undersize,
    Optional<Value> bendingStrength,
    Optional<Value> shearStrength,
    Value modification,
    Optional<Value> concreteStrength,
    Optional<Value> mesh,
    Optional<Value> meshDepth,
    Optional<Value> meshYield,
    Value lift) {}
