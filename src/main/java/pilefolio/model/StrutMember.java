package pilefolio.model;

import java.util.Optional;
import pilefolio.findings.CellRef;

/**
 * What the struts or rakers of a support consist of.
 *
 * @param at the first cell of the row
 * @param support id of the support
 * @param beam id of a rolled beam, its web upright; absent for a tube
 * @param tubeDiameter outside diameter of a round tube, a length
 * @param tubeWall wall thickness of the tube, a length
 * @param tubeYield yield strength of the tube, a pressure
 * @param curve buckling curve of the tube
 * @param length between pins, a length
 * @param effectiveLength effective length factor
 * @param eccentricity of the force, up or down; absent means a tenth of the depth
 * @param load on the strut beside its own weight, a force per length
 * @param temperatureRise above the temperature at installation
 * @param restraint degree of restraint of the lengthening by the walls, 0 to 1
 * @param wallStiffness of wall and ground per length of wall, a pressure; takes the place of the
 *     restraint
 * @param farEnd what the strut stands against
 */
public record StrutMember(
    CellRef at,
    String support,
    Optional<String> beam,
    Optional<Value> tubeDiameter,
    Optional<Value> tubeWall,
    Optional<Value> tubeYield,
    BucklingCurve curve,
    Value length,
    Value effectiveLength,
    Optional<Value> eccentricity,
    Value load,
    Value temperatureRise,
    Value restraint,
    Optional<Value> wallStiffness,
    FarEnd farEnd) {}
