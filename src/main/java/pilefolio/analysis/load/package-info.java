/**
 * Horizontal pressure on a wall from loads of limited extent on or in the ground behind it.
 *
 * <p>Units: kN, m, kPa; angles in radians. Depth is measured down from the level of the load, x
 * from the face of the wall away from it, y along the wall. Above its own level a load gives no
 * pressure. The elastic forms are those of a half space with twice the free-field stress, as for a
 * wall that does not yield.
 */
package pilefolio.analysis.load;
