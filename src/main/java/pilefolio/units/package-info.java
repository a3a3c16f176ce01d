/** Dimensions, units and the text of numbers; knows nothing of piles. */
package pilefolio.units;
