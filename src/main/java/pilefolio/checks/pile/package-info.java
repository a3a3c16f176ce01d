/** Checks of the vertical capacity of load-bearing piles in layered ground. */
package pilefolio.checks.pile;
