package pilefolio.submittal.schedule;

import java.util.Optional;
import java.util.OptionalDouble;
import pilefolio.analysis.sequence.Programme.PlannedPile;
import pilefolio.model.Pile;

/**
 * One pile of the schedule. Lengths and levels in m, volume in m³; a value is absent where the
 * check that gives it was not made.
 *
 * @param pile mark, kind and place
 * @param diameter over the cutting edge, m
 * @param platform level of the platform
 * @param cutOff cut-off level
 * @param toe toe level
 * @param drilled drilled length below the platform
 * @param cast length cast
 * @param volume concrete to order, overbreak included, m³
 * @param mix id of the mix
 * @param beam id of the beam, if there is one
 * @param planned its day and place in the order, if a programme was found
 */
public record PileLine(
    Pile pile,
    double diameter,
    double platform,
    double cutOff,
    OptionalDouble toe,
    OptionalDouble drilled,
    OptionalDouble cast,
    OptionalDouble volume,
    String mix,
    Optional<String> beam,
    Optional<PlannedPile> planned) {}
