package pilefolio.model;

import java.util.Optional;
import pilefolio.findings.CellRef;

/**
 * How concrete comes to the piles.
 *
 * @param at the first cell of the form
 * @param pumpRate output of the pump, volume per time
 * @param strokeVolume volume of one pump stroke
 * @param pumpEfficiency share of the stroke volume that is delivered, 0 to 1
 * @param overbreakPrimary volume cast over nominal volume, primaries
 * @param overbreakSecondary volume cast over nominal volume, secondaries
 * @param truckVolume volume of one truck
 * @param roundTrip time of a truck from plant to plant
 * @param dailyCap volume the plant supplies in a day; absent means no limit is known
 * @param liftRate rate at which the auger is withdrawn while concreting, length per time
 * @param logIncrement length of pile for which each record is kept
 * @param initialHead head of concrete above the tip before the first lift, a length
 * @param casingHead head of concrete kept above the casing shoe while it is pulled, a length
 * @param overcast length cast above cut-off level and trimmed later; absent means to platform
 */
public record ConcreteSupply(
    CellRef at,
    Value pumpRate,
    Optional<Value> strokeVolume,
    Value pumpEfficiency,
    Value overbreakPrimary,
    Value overbreakSecondary,
    Value truckVolume,
    Value roundTrip,
    Optional<Value> dailyCap,
    Value liftRate,
    Value logIncrement,
    Value initialHead,
    Value casingHead,
    Optional<Value> overcast) {}
