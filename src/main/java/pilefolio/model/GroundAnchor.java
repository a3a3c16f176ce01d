package pilefolio.model;

import java.util.Optional;
import pilefolio.findings.CellRef;

/**
 * The anchors of a support.
 *
 * @param at the first cell of the row
 * @param support id of the support
 * @param tendon kind of steel
 * @param count strands or bars of one anchor
 * @param area of one strand or bar, an area
 * @param strength tensile strength of the steel, a pressure
 * @param proofStrength proof strength at 0.1 %, a pressure; absent where none is needed
 * @param modulus modulus of elasticity, a pressure
 * @param freeLength a length; absent means it is sized
 * @param bondLength a length; absent means it is sized
 * @param bore diameter of the bore, a length
 * @param ground of the bond length
 * @param loadTransfer the user's ultimate load transfer, a force per length
 * @param bondStress the user's ultimate bond stress, a pressure
 * @param jackLength of tendon between head and jack grip, a length
 */
public record GroundAnchor(
    CellRef at,
    String support,
    TendonKind tendon,
    Value count,
    Value area,
    Value strength,
    Optional<Value> proofStrength,
    Value modulus,
    Optional<Value> freeLength,
    Optional<Value> bondLength,
    Value bore,
    BondGround ground,
    Optional<Value> loadTransfer,
    Optional<Value> bondStress,
    Value jackLength) {

  /** Area of the tendon, m². */
  public double tendonArea() {
    return count.si() * area.si();
  }
}
