package pilefolio.model;

import java.util.Optional;
import pilefolio.findings.CellRef;

/**
 * The auger and casing on a rig.
 *
 * @param at the first cell of the row
 * @param id name by which wall runs call it
 * @param augerDiameter outside diameter of the flights, a length
 * @param stemDiameter outside diameter of the hollow stem, a length
 * @param pitch of the flights, a length
 * @param casingOuter outside diameter over the cutting shoe, a length; only if cased
 * @param casingInner inside diameter of the casing, a length; only if cased
 * @param stringMass mass of the auger string per length
 * @param casingMass mass of the casing per length
 * @param mobilisedShare share of the bore wall on which shear acts while drilling, 0 to 1
 * @param stuckShare share of the bore wall's shear that must be overcome to pull a stuck auger or
 *     casing, 0 to 1
 * @param specificEnergy energy to cut a unit volume of ground, a pressure
 */
public record Tool(
    CellRef at,
    String id,
    Value augerDiameter,
    Value stemDiameter,
    Value pitch,
    Optional<Value> casingOuter,
    Optional<Value> casingInner,
    Optional<Value> stringMass,
    Optional<Value> casingMass,
    Value mobilisedShare,
    Value stuckShare,
    Optional<Value> specificEnergy) {}
