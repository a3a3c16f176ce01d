/**
 * Movement of the ground beside an excavation and what it does to a building.
 *
 * <p>Units: distances, heights and displacements in m, measured from the back of the wall; slopes
 * and strains are ratios. Settlement is positive downward, horizontal movement positive toward the
 * excavation. Tensile strain is positive.
 */
package pilefolio.analysis.movement;
