package pilefolio.submittal.figure;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A section through the wall at one stage. Retained ground is at the left, the excavation at the
 * right.
 *
 * @param id name of the figure in the document
 * @param caption one sentence
 * @param levelTitle title of the level scale with its unit
 * @param layers ground from top to bottom; the last one may end at the lowest level shown
 * @param groundBehind level of the ground behind the wall
 * @param excavation level of the ground in front, as designed
 * @param overExcavation level with the unplanned over-excavation taken off; equal when there is
 *     none
 * @param waterBehind water level behind; empty when there is none
 * @param waterFront water level in front; empty when there is none
 * @param wallTop top of the wall
 * @param primaryToe toe of the primaries
 * @param secondaryToe toe of the secondaries
 * @param wallThickness thickness of the wall to scale, in the unit of the levels
 * @param beam levels of the beam's top and bottom; empty when there is none
 * @param supports props and anchors
 * @param surcharge label of the load behind the wall; empty when there is none
 * @param levels levels to name at the edge
 * @param pressures diagrams beside the section, at most two
 */
public record SectionData(
    String id,
    String caption,
    String levelTitle,
    List<Layer> layers,
    double groundBehind,
    double excavation,
    double overExcavation,
    OptionalDouble waterBehind,
    OptionalDouble waterFront,
    double wallTop,
    double primaryToe,
    double secondaryToe,
    double wallThickness,
    List<Double> beam,
    List<Support> supports,
    String surcharge,
    List<Mark> levels,
    List<PressurePanel> pressures) {

  /** How the ground of a layer is drawn. */
  public enum Ground {
    /** Made ground. */
    FILL,
    /** Clay. */
    CLAY,
    /** Silt. */
    SILT,
    /** Sand. */
    SAND,
    /** Gravel. */
    GRAVEL,
    /** Rock. */
    ROCK
  }

  /**
   * A layer.
   *
   * @param name its name
   * @param ground how it is drawn
   * @param top level of its top
   * @param bottom level of its bottom
   */
  public record Layer(String name, Ground ground, double top, double bottom) {}

  /**
   * A prop or an anchor.
   *
   * @param level where it meets the wall
   * @param anchor true for an anchor, drawn behind the wall; false for a prop in front
   * @param degreesDown slope of an anchor below the horizontal
   * @param label its name
   */
  public record Support(double level, boolean anchor, double degreesDown, String label) {}

  /**
   * A diagram of pressures beside the section. Values are positive; a curve behind the wall is
   * drawn to the left, one in front to the right.
   *
   * @param title what it shows, with its unit
   * @param behind curves behind the wall; x is the pressure, y the level
   * @param front curves in front of the wall
   */
  public record PressurePanel(String title, List<Curve> behind, List<Curve> front) {
    /** Copies the lists. */
    public PressurePanel {
      behind = List.copyOf(behind);
      front = List.copyOf(front);
    }
  }

  /** Copies the lists. */
  public SectionData {
    layers = List.copyOf(layers);
    beam = List.copyOf(beam);
    supports = List.copyOf(supports);
    levels = List.copyOf(levels);
    pressures = List.copyOf(pressures);
  }
}
