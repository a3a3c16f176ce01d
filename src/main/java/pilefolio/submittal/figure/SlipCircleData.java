package pilefolio.submittal.figure;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A slip circle on the section of a run. The retained ground is drawn at the left, so distances
 * from the face of the wall grow to the left.
 *
 * @param id name of the figure in the document
 * @param caption one sentence
 * @param layers layers from the top down, across the whole section
 * @param groundBehind level of the ground behind
 * @param groundFront design excavation level
 * @param waterBehind water level behind, if there is any
 * @param waterFront water level in front, if there is any
 * @param wallTop level of the top of the wall
 * @param toe level of its toe
 * @param circle the circle
 * @param slices sides of the slices: distance from the wall toward the retained ground
 * @param supports supports of the wall
 * @param levels levels to name at the edge
 * @param unit unit of lengths, for the scale bar
 */
public record SlipCircleData(
    String id,
    String caption,
    List<SectionData.Layer> layers,
    double groundBehind,
    double groundFront,
    OptionalDouble waterBehind,
    OptionalDouble waterFront,
    double wallTop,
    double toe,
    Circle circle,
    List<Double> slices,
    List<Tie> supports,
    List<Mark> levels,
    String unit) {

  /** Copies the lists. */
  public SlipCircleData {
    layers = List.copyOf(layers);
    slices = List.copyOf(slices);
    supports = List.copyOf(supports);
    levels = List.copyOf(levels);
  }

  /**
   * The circle.
   *
   * @param x distance of the centre from the wall toward the retained ground
   * @param level level of the centre
   * @param radius radius
   * @param exit distance where it leaves the ground; negative in front
   * @param entry distance where it starts
   * @param label what to write at it
   */
  public record Circle(
      double x, double level, double radius, double exit, double entry, String label) {
    /** Level of its lower half at a distance. */
    public double at(double distance) {
      double d = distance - x;
      return level - Math.sqrt(Math.max(0, radius * radius - d * d));
    }
  }

  /**
   * A support that counts.
   *
   * @param level level at the wall
   * @param reach horizontal distance to its end behind the wall; 0 for a prop in front
   * @param drop how far its end lies lower
   */
  public record Tie(double level, double reach, double drop) {}
}
