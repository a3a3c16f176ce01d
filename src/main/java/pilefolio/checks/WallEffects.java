package pilefolio.checks;

import java.util.OptionalDouble;

/**
 * What a wall run must resist in one stage and combination, per metre of wall.
 *
 * <p>On a basis of partial factors the values are design effects; on an allowable-stress basis they
 * are service effects.
 *
 * @param run id of the wall run
 * @param stage number of the stage
 * @param combination id of the combination
 * @param moment greatest bending moment, N·m/m
 * @param momentLevel level of that moment, m
 * @param shear greatest shear force, N/m
 * @param supportForce horizontal support force, N/m; absent for a cantilever
 * @param spanPressure greatest net horizontal pressure on the retained height above excavation
 *     level, Pa; for the primaries that span between the secondaries
 * @param check the check whose sheet prints these values
 */
public record WallEffects(
    String run,
    int stage,
    String combination,
    double moment,
    double momentLevel,
    double shear,
    OptionalDouble supportForce,
    double spanPressure,
    Check check) {}
