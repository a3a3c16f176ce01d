/**
 * Apparent pressure envelopes for walls with several supports, and the beams that turn an envelope
 * into support forces and moments.
 *
 * <p>Units: kN, m, kPa per metre run of wall; angles in radians. Levels are elevations, positive
 * upward. Signs as in {@code analysis.wall}: pressure toward the excavation is positive, and so is
 * a moment with tension on the retained side.
 */
package pilefolio.analysis.apparent;
