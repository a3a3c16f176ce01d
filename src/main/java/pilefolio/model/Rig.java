package pilefolio.model;

import java.util.Optional;
import pilefolio.findings.CellRef;

/**
 * A drilling rig by the ratings its owner states. No rating is ever assumed: a check without one is
 * not made, and says so.
 *
 * @param at the first cell of the row
 * @param id name by which wall runs call it
 * @param description what it is, in words
 * @param technique how it bores
 * @param mass working mass
 * @param augerTorque rated torque of the auger head, force times length
 * @param casingTorque rated torque of the casing head, force times length
 * @param crowd rated downward force
 * @param pull rated extraction force
 * @param stroke travel of the head on the mast, a length
 * @param extension length by which a drill string extension adds to the stroke, a length
 * @param headOffset length of the stroke lost to auger cleaner and casing ejector, a length
 * @param winchLinePull rated pull of one line of the winch used for beams, a force
 * @param winchParts count of parts of line
 * @param hookHeight greatest height of the hook above the platform, a length
 * @param reach rated greatest distance from the centre of slewing to the pile axis, a length
 * @param setUpDistance that distance as the rig is set up on this job, a length
 * @param batterForward greatest inclination of the mast forward, an angle
 * @param batterBackward greatest inclination of the mast backward, an angle
 * @param rotation speed of the auger while drilling, revolutions per time
 * @param penetration advance of the auger while drilling, length per time
 */
public record Rig(
    CellRef at,
    String id,
    String description,
    Technique technique,
    Optional<Value> mass,
    Optional<Value> augerTorque,
    Optional<Value> casingTorque,
    Optional<Value> crowd,
    Optional<Value> pull,
    Optional<Value> stroke,
    Optional<Value> extension,
    Optional<Value> headOffset,
    Optional<Value> winchLinePull,
    Optional<Value> winchParts,
    Optional<Value> hookHeight,
    Optional<Value> reach,
    Optional<Value> setUpDistance,
    Optional<Value> batterForward,
    Optional<Value> batterBackward,
    Optional<Value> rotation,
    Optional<Value> penetration) {}
