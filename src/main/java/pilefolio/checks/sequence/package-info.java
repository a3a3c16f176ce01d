/** Strength window, order of drilling, programme and time in the shift. */
package pilefolio.checks.sequence;
