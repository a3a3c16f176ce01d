/**
 * Early age of concrete and the order in which the piles of a wall are made.
 *
 * <p>Ages are in days (equivalent days at 20 °C where said so), retarding and setting times in
 * hours, temperatures in °C, strengths in MPa, plan coordinates and diameters in m.
 */
package pilefolio.analysis.sequence;
