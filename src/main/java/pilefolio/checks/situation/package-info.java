/**
 * The bridge from what the user described to the numerical work: a design situation is one stage of
 * one wall run in one combination of the design basis, with design values; a solution is the wall
 * in equilibrium there. Checks of ground, stability and structure read the same solutions, so no
 * two pages can disagree.
 *
 * <p>Here the model's N and Pa become the kN and kPa of {@code analysis}.
 */
package pilefolio.checks.situation;
