/**
 * Geometry of overlapping piles and the chance that a joint opens with depth.
 *
 * <p>Plan distances are in mm, depths in m, probabilities are fractions of one. The models assume
 * independent, normally distributed deviations; obstructions and operator errors are outside them.
 */
package pilefolio.analysis.reliability;
