package pilefolio.model;

import java.util.Optional;

/**
 * What checks of sheet piles need beside the properties of the wall.
 *
 * @param form Z or U
 * @param depth depth of the wall section, a length
 * @param flange flange thickness, a length
 * @param web web thickness, a length
 * @param flatWidth flat width of a flange between its rounded corners, a length
 * @param webSlope slope of the webs, an angle
 * @param plasticModulus per length of wall, m³/m
 * @param bendingShare share of the bending resistance where interlocks slip, 0 to 1
 * @param stiffnessShare share of the stiffness where interlocks slip, 0 to 1
 * @param corrosion loss of thickness over the life of the wall, both faces together, a length
 */
public record SheetShape(
    SheetForm form,
    Optional<Value> depth,
    Optional<Value> flange,
    Optional<Value> web,
    Optional<Value> flatWidth,
    Optional<Value> webSlope,
    Optional<Value> plasticModulus,
    Value bendingShare,
    Value stiffnessShare,
    Value corrosion) {

  /** Webs of one sheet. */
  public int webs() {
    return form == SheetForm.Z ? 1 : 2;
  }
}
