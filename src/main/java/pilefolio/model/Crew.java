package pilefolio.model;

import java.util.Optional;
import pilefolio.findings.CellRef;

/**
 * A rig with its crew and what they do in a shift.
 *
 * @param at the first cell of the row
 * @param id name
 * @param rig id of the rig
 * @param shift length of a shift, a time
 * @param nonProductive start, stop and breaks in a shift, a time
 * @param availability share of the rest that is worked, 0 to 1
 * @param moveAndSetUp time a pile, a time
 * @param beamSetting time a pile with a beam, a time
 * @param cleaning time a pile, a time
 * @param drillingPrimary rate, length per time
 * @param drillingSecondary rate, length per time
 * @param pilesPerShift most piles in a shift; absent means as the cycle times allow
 */
public record Crew(
    CellRef at,
    String id,
    String rig,
    Value shift,
    Value nonProductive,
    Value availability,
    Value moveAndSetUp,
    Value beamSetting,
    Value cleaning,
    Value drillingPrimary,
    Value drillingSecondary,
    Optional<Value> pilesPerShift) {}
