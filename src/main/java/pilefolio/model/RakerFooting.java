package pilefolio.model;

import pilefolio.findings.CellRef;

/**
 * The footing of a raker.
 *
 * @param at the first cell of the row
 * @param support id of the support
 * @param length of the base in the direction of the raker
 * @param width of the base along the wall
 * @param thickness a length
 * @param tilt of the base towards the raker, an angle
 * @param eccentricity of the raker on the base, a length
 * @param bearing bearing resistance, a pressure: allowable on an allowable-stress basis, design
 *     value otherwise
 * @param friction friction coefficient of the base, likewise
 * @param resistance horizontal resistance in front, a force, likewise
 */
public record RakerFooting(
    CellRef at,
    String support,
    Value length,
    Value width,
    Value thickness,
    Value tilt,
    Value eccentricity,
    Value bearing,
    Value friction,
    Value resistance) {}
