/** Walls with several supports by apparent pressure: envelope, beams, and what governs. */
package pilefolio.checks.apparent;
