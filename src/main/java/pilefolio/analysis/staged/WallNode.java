package pilefolio.analysis.staged;

/**
 * The wall at one level in one stage.
 *
 * @param level level, m
 * @param displacement displacement since the beginning, m, positive toward the excavation
 * @param rotation change of displacement per metre of depth
 * @param moment bending moment, kNm/m, positive with tension on the retained side
 * @param shearAbove shear force just above, kN/m
 * @param shearBelow shear force just below, kN/m; differs at supports and line loads
 */
public record WallNode(
    double level,
    double displacement,
    double rotation,
    double moment,
    double shearAbove,
    double shearBelow) {}
