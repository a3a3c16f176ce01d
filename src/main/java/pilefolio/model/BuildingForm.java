package pilefolio.model;

import java.util.Optional;

/**
 * What a building needs to be looked at as a beam.
 *
 * @param extent extent away from the wall, a length
 * @param height height from foundation to eaves, a length
 * @param stiffnessRatio modulus of elasticity over shear modulus
 * @param allowed greatest category of damage allowed
 */
public record BuildingForm(
    Optional<Value> extent,
    Optional<Value> height,
    Value stiffnessRatio,
    Optional<AllowedDamage> allowed) {}
