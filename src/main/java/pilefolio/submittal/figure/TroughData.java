package pilefolio.submittal.figure;

import java.util.List;

/**
 * Settlement of the ground behind a wall by stage, with the neighbours where they stand.
 *
 * @param id name of the figure in the document
 * @param caption one sentence or two
 * @param distanceTitle title of the horizontal scale with its unit
 * @param settlementTitle title of the vertical scale with its unit; settlement grows downward
 * @param curves settlement by stage; x is the distance from the wall, y the settlement
 * @param neighbours the neighbours from the wall outward
 * @param far greatest distance drawn
 */
public record TroughData(
    String id,
    String caption,
    String distanceTitle,
    String settlementTitle,
    List<Curve> curves,
    List<Beside> neighbours,
    double far) {

  /**
   * A neighbour.
   *
   * @param label name and settlement
   * @param building true if it is drawn as a house
   * @param near distance of its near side
   * @param far distance of its far side; the near one if its extent is not known
   * @param place where it settles most
   * @param settlement its greatest settlement
   */
  public record Beside(
      String label, boolean building, double near, double far, double place, double settlement) {}

  /** Copies the lists. */
  public TroughData {
    curves = List.copyOf(curves);
    neighbours = List.copyOf(neighbours);
  }
}
