package pilefolio.model;

import java.util.Optional;
import pilefolio.findings.CellRef;

/**
 * A concrete mix.
 *
 * @param at the first cell of the row
 * @param id name by which piles call it
 * @param use what it is for
 * @param strength at 28 days, a pressure: characteristic or specified for secondaries, mean
 *     expected for primaries
 * @param specimen specimen on which the strength is stated
 * @param cement strength class of the cement
 * @param aciA constant a of ACI 209, days as a plain number
 * @param aciB constant b of ACI 209
 * @param slump slump, a length
 * @param retardation time by which strength gain starts later, a time
 * @param unitWeight fresh concrete, force per volume
 * @param largestAggregate largest grain, a length
 * @param workabilityLife time from batching during which it can be placed and a beam be set, a time
 * @param yieldStress yield stress of the fresh concrete at rest, a pressure
 * @param thixotropy growth of that yield stress at rest, pressure per time
 * @param cuttingLimit largest strength the tool can cut, a pressure; for primaries
 * @param standingLimit least strength at which it stands beside the drill, a pressure; for
 *     primaries
 * @param deliveredTemperature temperature on delivery
 */
public record Mix(
    CellRef at,
    String id,
    MixUse use,
    Value strength,
    StrengthSpecimen specimen,
    CementClass cement,
    Optional<Value> aciA,
    Optional<Value> aciB,
    Optional<Value> slump,
    Value retardation,
    Value unitWeight,
    Optional<Value> largestAggregate,
    Value workabilityLife,
    Optional<Value> yieldStress,
    Optional<Value> thixotropy,
    Optional<Value> cuttingLimit,
    Optional<Value> standingLimit,
    Optional<Value> deliveredTemperature) {}
