package pilefolio.model;

/**
 * How walls with several supports are taken by apparent pressure.
 *
 * @param diagram which envelope
 * @param beam which beams give the forces that are designed for
 * @param foot what holds the wall below its lowest support
 * @param stiffShare ordinate or total load in stiff clay over γ·H or γ·H², 0.2 to 0.4
 */
public record ApparentMethod(
    ApparentDiagram diagram, ApparentBeam beam, ApparentFoot foot, Value stiffShare) {}
