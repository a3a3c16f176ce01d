package pilefolio.output.figure;

/**
 * The colours of all drawings: ink, greys, one accent, one warning colour. The style sheet uses the
 * same values. Colours only support what is also said by line style, hatch or word, so that a copy
 * in grey says the same.
 */
public final class Palette {
  /** Text, outlines, main curves. */
  public static final Ink INK = Ink.of(0x1A1C1E);

  /** Secondary text, dimensions. */
  public static final Ink GREY = Ink.of(0x5B6166);

  /** Hatches, minor outlines. */
  public static final Ink LIGHT_GREY = Ink.of(0x9AA1A6);

  /** Grid lines. */
  public static final Ink FAINT = Ink.of(0xDADEE0);

  /** Fills that only separate. */
  public static final Ink PAPER = Ink.of(0xF3F5F5);

  /** The accent: what the figure is about. */
  public static final Ink ACCENT = Ink.of(0x1F5A66);

  /** The accent as a fill. */
  public static final Ink ACCENT_TINT = ACCENT.tint(0.16);

  /** Limits and what is not satisfied. */
  public static final Ink WARNING = Ink.of(0x9A3B26);

  /** Water. */
  public static final Ink WATER = Ink.of(0x3F7CA8);

  /** White. */
  public static final Ink WHITE = Ink.of(0xFFFFFF);

  private Palette() {}
}
