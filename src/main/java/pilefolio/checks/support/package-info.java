/**
 * Checks of what holds a wall: struts, walers, ground anchors, rakers with their footings, and
 * anchor blocks.
 */
package pilefolio.checks.support;
