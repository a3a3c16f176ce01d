/** Demands on the rig against the ratings the user states, and handling of the beams. */
package pilefolio.checks.rig;
