package pilefolio.submittal.figure;

import java.util.List;

/**
 * Values against level or depth in panels side by side: shear and moment, displacement, resistance
 * of a pile.
 *
 * @param id name of the figure in the document
 * @param caption one sentence
 * @param verticalTitle title of the vertical scale with its unit
 * @param depths true when the vertical values are depths and grow downwards
 * @param panels panels from left to right, at most four
 * @param marks levels or depths drawn across all panels
 */
public record DepthPlotData(
    String id,
    String caption,
    String verticalTitle,
    boolean depths,
    List<Panel> panels,
    List<Mark> marks) {

  /**
   * A panel.
   *
   * @param title what it shows, with its unit
   * @param curves its curves; x is the value, y the level or depth
   * @param extremes values to label, such as the greatest moment
   */
  public record Panel(String title, List<Curve> curves, List<Extreme> extremes) {
    /** Copies the lists. */
    public Panel {
      curves = List.copyOf(curves);
      extremes = List.copyOf(extremes);
    }
  }

  /**
   * A labelled point of a curve.
   *
   * @param x value
   * @param y level or depth
   * @param label text, such as {@code 412 kN·m/m}
   */
  public record Extreme(double x, double y, String label) {}

  /** Copies the lists. */
  public DepthPlotData {
    panels = List.copyOf(panels);
    marks = List.copyOf(marks);
  }
}
