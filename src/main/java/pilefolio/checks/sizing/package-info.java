/**
 * What the user leaves to the engine: toe levels, sections of beams and the spacing of soldier
 * beams are set to the least that passes every check, and the next smaller is named with what it
 * fails.
 */
package pilefolio.checks.sizing;
