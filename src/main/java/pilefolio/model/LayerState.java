package pilefolio.model;

import java.util.Optional;

/**
 * Initial state, stiffness and water of a layer.
 *
 * @param atRest at-rest coefficient; found from strength and history if empty
 * @param overconsolidation ratio of the greatest past to the present vertical effective stress
 * @param subgradeModulus horizontal subgrade modulus of one side of a wall, N/m³
 * @param permeability coefficient of permeability, m/s
 * @param piezometricLevel water level in the layer behind the wall where it is not that of the
 *     stage: artesian or perched water, m
 */
public record LayerState(
    Optional<Value> atRest,
    Value overconsolidation,
    Optional<Value> subgradeModulus,
    Optional<Value> permeability,
    Optional<Value> piezometricLevel) {}
