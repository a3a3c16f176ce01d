package pilefolio.output.figure;

/**
 * A colour of the printed page.
 *
 * @param red 0 to 255
 * @param green 0 to 255
 * @param blue 0 to 255
 */
public record Ink(int red, int green, int blue) {

  /** Refuses components outside 0 to 255. */
  public Ink {
    if ((red | green | blue) < 0 || red > 255 || green > 255 || blue > 255) {
      throw new IllegalArgumentException("colour component outside 0 to 255");
    }
  }

  /** A colour written as 0xRRGGBB. */
  public static Ink of(int rgb) {
    return new Ink(rgb >> 16 & 0xff, rgb >> 8 & 0xff, rgb & 0xff);
  }

  /**
   * This colour mixed with white.
   *
   * @param share part of this colour that stays, 0 (white) to 1 (unchanged)
   */
  public Ink tint(double share) {
    return new Ink(lighten(red, share), lighten(green, share), lighten(blue, share));
  }

  private static int lighten(int component, double share) {
    return (int) Math.round(255 - (255 - component) * share);
  }
}
