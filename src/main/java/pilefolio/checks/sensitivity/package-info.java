/**
 * What a wall does when one assumption at a time is changed: the same analysis on a changed
 * submission, beside the wall as designed.
 */
package pilefolio.checks.sensitivity;
