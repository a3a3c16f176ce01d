/**
 * What the figures of the documents show, as plain records: numbers in the units that are printed,
 * labels ready to print. Filled from results; drawn by the output. Levels are elevations, positive
 * upwards; depths are positive downwards.
 */
package pilefolio.submittal.figure;
