/**
 * Equilibrium of an embedded wall: embedment, support force, shear and bending moment.
 *
 * <p>Units: kN, m, kPa per metre run of wall; levels are elevations, positive upward. Net pressure
 * and forces are positive when they push the wall toward the excavation. Shear is the sum of all
 * that acts above a level; a positive moment puts tension on the retained side.
 */
package pilefolio.analysis.wall;
