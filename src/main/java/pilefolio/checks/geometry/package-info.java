/** Overlap and joints of neighbouring piles in the ground, tolerances and levels. */
package pilefolio.checks.geometry;
