/**
 * Checks of the structure of a secant wall: the beam in the secondaries, and the primaries that
 * span between them.
 */
package pilefolio.checks.structure;
