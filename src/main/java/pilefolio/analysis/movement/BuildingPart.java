package pilefolio.analysis.movement;

/**
 * A part of a building that bends one way throughout.
 *
 * @param from distance of its near side from the wall, m
 * @param to distance of its far side from the wall, m
 * @param bending which way it bends
 * @param place distance of the greatest deflection from the wall, m
 * @param deflection greatest distance of the ground from the straight between the ends of the part,
 *     m, zero or more
 * @param horizontalStrain average horizontal strain over the part, zero or more
 */
public record BuildingPart(
    double from,
    double to,
    DeepBeam.Bending bending,
    double place,
    double deflection,
    double horizontalStrain) {

  /** Length, m. */
  public double length() {
    return to - from;
  }

  /** Deflection over length. */
  public double deflectionRatio() {
    return deflection / length();
  }
}
