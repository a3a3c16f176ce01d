package pilefolio.analysis.staged;

/**
 * Pressure of one side on a slice of the wall.
 *
 * @param top values at the top of the slice, as seen from inside
 * @param bottom values at its bottom
 * @param force resultant of earth and water pressure, kN/m, positive against the wall
 * @param moment moment of that force about the bottom of the slice, kNm/m
 * @param earthForce resultant of earth pressure alone, kN/m
 * @param passiveForce resultant of the passive limit, kN/m
 */
public record SideSlice(
    SidePoint top,
    SidePoint bottom,
    double force,
    double moment,
    double earthForce,
    double passiveForce) {}
