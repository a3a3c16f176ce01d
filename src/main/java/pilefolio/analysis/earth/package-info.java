/**
 * Lateral earth and water pressure on a vertical wall.
 *
 * <p>Units throughout: kN, m, kPa, kN/m³; angles in radians (names end in {@code Rad}); levels are
 * elevations, positive upward. Pressures act on one metre run of wall. Strengths and unit weights
 * are taken as given: a caller that works with partial factors passes design values.
 */
package pilefolio.analysis.earth;
