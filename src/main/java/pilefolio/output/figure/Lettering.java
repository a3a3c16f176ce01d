package pilefolio.output.figure;

/**
 * How a label is set.
 *
 * @param style upright, bold or italic
 * @param sizePt size in points
 * @param ink colour
 * @param along where the point given lies along the text
 * @param across where the point given lies across the text
 * @param turnedDegrees turned anticlockwise round the point given
 */
public record Lettering(
    Style style, double sizePt, Ink ink, Along along, Across across, double turnedDegrees) {

  /** Cut of the face. */
  public enum Style {
    /** Upright. */
    REGULAR,
    /** Upright, bold. */
    BOLD,
    /** Italic. */
    ITALIC
  }

  /** Position of the given point along the text. */
  public enum Along {
    /** The text starts at the point. */
    START,
    /** The text is centred on the point. */
    MIDDLE,
    /** The text ends at the point. */
    END
  }

  /** Position of the given point across the text. */
  public enum Across {
    /** On the base line. */
    BASELINE,
    /** At half the height of a capital. */
    CENTRE,
    /** At the height of a capital: the text hangs below the point. */
    TOP,
    /** Below the descenders: the text stands above the point. */
    BOTTOM
  }

  /** Ordinary label, 7 pt, starting at the point. */
  public static final Lettering LABEL =
      new Lettering(Style.REGULAR, 7, Palette.INK, Along.START, Across.BASELINE, 0);

  /** Small label, 6 pt. */
  public static final Lettering SMALL = LABEL.sized(6);

  /** Head of a panel or an axis, 7 pt bold. */
  public static final Lettering HEAD = LABEL.bold();

  /** The same, starting at the point. */
  public Lettering start() {
    return new Lettering(style, sizePt, ink, Along.START, across, turnedDegrees);
  }

  /** The same, centred along the text. */
  public Lettering middle() {
    return new Lettering(style, sizePt, ink, Along.MIDDLE, across, turnedDegrees);
  }

  /** The same, ending at the point. */
  public Lettering end() {
    return new Lettering(style, sizePt, ink, Along.END, across, turnedDegrees);
  }

  /** The same, centred across the text. */
  public Lettering centred() {
    return new Lettering(style, sizePt, ink, along, Across.CENTRE, turnedDegrees);
  }

  /** The same, hanging below the point. */
  public Lettering below() {
    return new Lettering(style, sizePt, ink, along, Across.TOP, turnedDegrees);
  }

  /** The same, standing above the point. */
  public Lettering above() {
    return new Lettering(style, sizePt, ink, along, Across.BOTTOM, turnedDegrees);
  }

  /** The same in bold. */
  public Lettering bold() {
    return new Lettering(Style.BOLD, sizePt, ink, along, across, turnedDegrees);
  }

  /** The same in italics. */
  public Lettering italic() {
    return new Lettering(Style.ITALIC, sizePt, ink, along, across, turnedDegrees);
  }

  /** The same in another size, in points. */
  public Lettering sized(double points) {
    return new Lettering(style, points, ink, along, across, turnedDegrees);
  }

  /** The same in another colour. */
  public Lettering in(Ink other) {
    return new Lettering(style, sizePt, other, along, across, turnedDegrees);
  }

  /** The same, turned anticlockwise. */
  public Lettering turned(double degrees) {
    return new Lettering(style, sizePt, ink, along, across, degrees);
  }

  /** Height of a capital in mm. */
  public double capHeightMm() {
    return sizePt * 0.729 * 25.4 / 72;
  }

  /** Distance between the base lines of two lines of text in mm. */
  public double lineMm() {
    return sizePt * 1.25 * 25.4 / 72;
  }
}
