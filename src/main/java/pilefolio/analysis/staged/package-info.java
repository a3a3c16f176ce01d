/**
 * A wall through its construction stages: an elastic beam between elastoplastic springs that start
 * from the pressure at rest.
 *
 * <p>Units: kN, m, kPa per metre run of wall; levels are elevations, positive upward. Displacement,
 * loads and net pressure are positive toward the excavation; rotation is the change of displacement
 * per metre of depth. Shear is the sum of all that acts above a level; a positive moment puts
 * tension on the retained side. Support forces are horizontal and positive when they push the wall
 * back toward the retained ground.
 *
 * <p>Rules that the numbers rest on:
 *
 * <ul>
 *   <li>Ground: the pressure on each side is the at-rest pressure of the stage, changed by the
 *       modulus of subgrade reaction times the displacement, and held between the active and the
 *       passive limit of the stage ({@link pilefolio.analysis.staged.SpringLaw}). Whether plastic
 *       movement is remembered is a choice ({@link pilefolio.analysis.staged.GroundMemory}).
 *   <li>Excavation, water and load: they enter through the at-rest, active and passive pressure of
 *       the stage. The at-rest pressure follows the vertical stress in both directions.
 *   <li>Supports: in the stage in which a support is placed it acts with its lock-off force alone;
 *       from the displacement reached there on it is a spring. A stage that digs and places at once
 *       is therefore two stages.
 *   <li>Stiffness of the wall: if it falls, moments relax with it; if it rises, what is added
 *       starts without moment.
 * </ul>
 */
package pilefolio.analysis.staged;
