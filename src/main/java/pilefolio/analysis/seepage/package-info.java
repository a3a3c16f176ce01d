/**
 * Steady flow of ground water round the toe of a wall.
 *
 * <p>Units: m, m/s; heads are measured above the datum of the levels. Flow is per metre run of
 * wall.
 */
package pilefolio.analysis.seepage;
