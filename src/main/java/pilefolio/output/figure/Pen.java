package pilefolio.output.figure;

import java.util.List;

/**
 * How a line is drawn.
 *
 * @param ink colour
 * @param widthMm line width in mm on paper, above 0
 * @param dashMm lengths of dashes and gaps in mm, in turn; empty for a full line
 */
public record Pen(Ink ink, double widthMm, List<Double> dashMm) {
  /** Outlines and main curves. */
  public static final Pen BOLD = of(Palette.INK, 0.5);

  /** Ordinary lines. */
  public static final Pen MEDIUM = of(Palette.INK, 0.25);

  /** Dimensions, leaders, hatches. */
  public static final Pen FINE = of(Palette.GREY, 0.13);

  /** Grid lines. */
  public static final Pen GRID = of(Palette.FAINT, 0.13);

  /** Copies the dash list and refuses a width that is not above 0. */
  public Pen {
    dashMm = List.copyOf(dashMm);
    if (!(widthMm > 0)) {
      throw new IllegalArgumentException("line width must be above 0 mm");
    }
  }

  /** A full line. */
  public static Pen of(Ink ink, double widthMm) {
    return new Pen(ink, widthMm, List.of());
  }

  /** The same line in dashes. */
  public Pen dashed(double onMm, double offMm) {
    return new Pen(ink, widthMm, List.of(onMm, offMm));
  }

  /** The same line as a chain line: dash, gap, dot, gap. */
  public Pen chain() {
    return new Pen(ink, widthMm, List.of(3.0, 0.8, 0.4, 0.8));
  }

  /** The same line in another colour. */
  public Pen with(Ink other) {
    return new Pen(other, widthMm, dashMm);
  }

  /** The same line in another width, in mm. */
  public Pen wide(double otherMm) {
    return new Pen(ink, otherMm, dashMm);
  }
}
