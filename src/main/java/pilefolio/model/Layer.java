package pilefolio.model;

import java.util.Optional;
import pilefolio.findings.CellRef;

/**
 * One layer of a ground profile; it reaches down to the top of the next.
 *
 * @param at the first cell of the row
 * @param name short name, such as {@code Upper sand}
 * @param description description as on the log
 * @param kind kind of ground
 * @param top level of the top, an elevation
 * @param unitWeight above the water level, force per volume
 * @param unitWeightBelow below the water level (saturated, not buoyant), force per volume
 * @param drainage which strength governs
 * @param frictionAngle effective angle of friction, an angle; present if drained, or if the layer
 *     also has long-term strength
 * @param cohesion effective cohesion, a pressure; present with the friction angle
 * @param shearStrength undrained shear strength at the top, a pressure; present if undrained
 * @param shearStrengthIncrease increase of the undrained strength with depth, pressure per length
 * @param wallFrictionActive wall friction over friction angle on the active side, 0 to 1
 * @param wallFrictionPassive wall friction over friction angle on the passive side, 0 to 1
 * @param wallAdhesion wall adhesion over undrained strength or cohesion, 0 to 1
 * @param n60 corrected blow count of the penetration test
 * @param source where the parameters come from, in words
 * @param state initial state, stiffness and water
 */
public record Layer(
    CellRef at,
    String name,
    String description,
    SoilKind kind,
    Value top,
    Value unitWeight,
    Value unitWeightBelow,
    Drainage drainage,
    Optional<Value> frictionAngle,
    Optional<Value> cohesion,
    Optional<Value> shearStrength,
    Optional<Value> shearStrengthIncrease,
    Value wallFrictionActive,
    Value wallFrictionPassive,
    Value wallAdhesion,
    Optional<Value> n60,
    String source,
    LayerState state) {}
