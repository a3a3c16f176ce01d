package pilefolio.model;

import pilefolio.findings.CellRef;

/**
 * The waler between the wall and a level of struts or anchors.
 *
 * @param at the first cell of the row
 * @param support id of the support
 * @param beam id of the rolled beam
 * @param beams beams side by side
 * @param spans spans from joint to joint
 * @param overhang beyond the last support, a length
 * @param setting how it stands to inclined supports
 */
public record Waler(
    CellRef at,
    String support,
    String beam,
    Value beams,
    Value spans,
    Value overhang,
    WalerSetting setting) {}
