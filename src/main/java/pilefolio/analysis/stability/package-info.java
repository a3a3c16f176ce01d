/**
 * Stability of the ground round an excavation: heave of the base, seepage, uplift and slip circles.
 *
 * <p>Units throughout: kN, m, kPa, kN/m³; angles in radians (names end in {@code Rad}); levels are
 * elevations, positive upward. Everything acts on one metre run of wall. Strengths, weights and
 * loads are taken as given: a caller that works with partial factors passes design values.
 *
 * <p>Sections stand with the excavation on the side of small x and the retained ground on the side
 * of large x; the face of the wall is at x = 0.
 */
package pilefolio.analysis.stability;
