package pilefolio.submittal.figure;

import java.util.List;

/**
 * Overlap left between neighbouring piles against depth.
 *
 * @param id name of the figure in the document
 * @param caption one sentence
 * @param overlapTitle title of the horizontal scale with its unit
 * @param depthTitle title of the vertical scale with its unit
 * @param asSetOut overlap without any deviation
 * @param deterministic overlap when both piles lean apart by their full tolerance; x overlap, y
 *     depth
 * @param rootSumSquare overlap with the deviations added as root of the sum of squares; may have no
 *     points
 * @param required least overlap to keep
 * @param requiredLabel its label
 * @param depths depths to mark: cut-off, excavation, toe of the primary
 * @param contactLost label of the depth at which contact is lost; empty when it is not lost
 * @param contactLostDepth that depth; ignored when the label is empty
 */
public record JointOverlapData(
    String id,
    String caption,
    String overlapTitle,
    String depthTitle,
    double asSetOut,
    Curve deterministic,
    Curve rootSumSquare,
    double required,
    String requiredLabel,
    List<Mark> depths,
    String contactLost,
    double contactLostDepth) {
  /** Copies the list. */
  public JointOverlapData {
    depths = List.copyOf(depths);
  }
}
