/**
 * Movement of the wall and of the ground, what it does to the neighbours, and whether the triggers
 * of the monitoring fit it.
 */
package pilefolio.checks.movement;
