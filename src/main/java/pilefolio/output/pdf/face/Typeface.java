package pilefolio.output.pdf.face;

import com.lowagie.text.pdf.BaseFont;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.security.SecureRandom;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** The embedded faces. All documents use these and no others, so that they look alike anywhere. */
public enum Typeface {
  /** Liberation Sans. */
  SANS("Liberation Sans", false, false, "LiberationSans-Regular"),
  /** Liberation Sans Bold. */
  SANS_BOLD("Liberation Sans", true, false, "LiberationSans-Bold"),
  /** Liberation Sans Italic. */
  SANS_ITALIC("Liberation Sans", false, true, "LiberationSans-Italic"),
  /** Liberation Sans Bold Italic. */
  SANS_BOLD_ITALIC("Liberation Sans", true, true, "LiberationSans-BoldItalic"),
  /** Liberation Serif. */
  SERIF("Liberation Serif", false, false, "LiberationSerif-Regular"),
  /** Liberation Serif Bold. */
  SERIF_BOLD("Liberation Serif", true, false, "LiberationSerif-Bold"),
  /** Liberation Serif Italic. */
  SERIF_ITALIC("Liberation Serif", false, true, "LiberationSerif-Italic"),
  /** Liberation Serif Bold Italic. */
  SERIF_BOLD_ITALIC("Liberation Serif", true, true, "LiberationSerif-BoldItalic"),
  /** Liberation Mono. */
  MONO("Liberation Mono", false, false, "LiberationMono-Regular"),
  /** Liberation Mono Bold. */
  MONO_BOLD("Liberation Mono", true, false, "LiberationMono-Bold"),
  /** Liberation Mono Italic. */
  MONO_ITALIC("Liberation Mono", false, true, "LiberationMono-Italic"),
  /** Liberation Mono Bold Italic. */
  MONO_BOLD_ITALIC("Liberation Mono", true, true, "LiberationMono-BoldItalic");

  private static final Map<Typeface, Loaded> LOADED = new ConcurrentHashMap<>();

  private final String family;
  private final boolean bold;
  private final boolean italic;
  private final String file;

  Typeface(String family, boolean bold, boolean italic, String file) {
    this.family = family;
    this.bold = bold;
    this.italic = italic;
    this.file = file;
  }

  /** Name of the family as a style sheet writes it. */
  public String family() {
    return family;
  }

  /** Whether it is a bold cut. */
  public boolean isBold() {
    return bold;
  }

  /** Whether it is an italic cut. */
  public boolean isItalic() {
    return italic;
  }

  /**
   * The face of a family; the generic names stand for the three families.
   *
   * @return empty when the family is not one of ours
   */
  public static Optional<Typeface> find(String familyName, boolean bold, boolean italic) {
    String name =
        switch (familyName) {
          case "serif", "Serif" -> "Liberation Serif";
          case "sans-serif", "SansSerif" -> "Liberation Sans";
          case "monospace", "Monospaced" -> "Liberation Mono";
          default -> familyName;
        };
    return Arrays.stream(values())
        .filter(f -> f.family.equalsIgnoreCase(name) && f.bold == bold && f.italic == italic)
        .findFirst();
  }

  /** The font as the writer takes it; embedded as a subset, with Unicode. */
  public BaseFont font() {
    return loaded().font;
  }

  /** Whether the face can show a character. */
  public boolean shows(int codePoint) {
    return loaded().shows(codePoint);
  }

  private Loaded loaded() {
    return LOADED.computeIfAbsent(this, face -> new Loaded(load(face.file)));
  }

  /** A font in memory with what is known of its characters. */
  private static final class Loaded {
    private final BaseFont font;
    private final BitSet known = new BitSet();
    private final BitSet tested = new BitSet();

    Loaded(BaseFont font) {
      this.font = font;
    }

    synchronized boolean shows(int codePoint) {
      if (!tested.get(codePoint)) {
        tested.set(codePoint);
        known.set(codePoint, font.charExists(codePoint));
      }
      return known.get(codePoint);
    }
  }

  /** Width of a text in points. */
  public double width(String text, double sizePt) {
    return font().getWidth(text) * sizePt / 1000;
  }

  /** The face of a font made by {@link #font()}. */
  public static Typeface of(BaseFont font) {
    for (Map.Entry<Typeface, Loaded> entry : LOADED.entrySet()) {
      if (entry.getValue().font.equals(font)) {
        return entry.getKey();
      }
    }
    throw new IllegalArgumentException("not one of the embedded faces");
  }

  private static BaseFont load(String file) {
    String path = "/liberation/" + file + ".ttf";
    try (InputStream in = Typeface.class.getResourceAsStream(path)) {
      if (in == null) {
        throw new IllegalStateException("font missing on the class path: " + path);
      }
      BaseFont loaded =
          BaseFont.createFont(
              file + ".ttf",
              BaseFont.IDENTITY_H,
              BaseFont.EMBEDDED,
              false,
              in.readAllBytes(),
              null);
      // PDF/A wants either a complete CIDSet or none; the writer's is not complete.
      loaded.setIncludeCidSet(false);
      loaded.setSecureRandom(new FixedTag());
      return loaded;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Makes the tag in front of a subset's name the same each time. It keeps no state, so that
   * documents written side by side get the same tag too.
   */
  private static final class FixedTag extends SecureRandom {
    private static final long serialVersionUID = 1L;

    @Override
    public double nextDouble() {
      return 0.5;
    }
  }
}
