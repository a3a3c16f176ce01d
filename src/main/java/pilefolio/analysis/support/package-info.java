/**
 * Members that support a wall: walers over their struts or anchors.
 *
 * <p>Units: kN, m. Loads press the waler towards its supports; a hogging moment, with tension on
 * the loaded side over a support, is positive.
 */
package pilefolio.analysis.support;
