package pilefolio.output.pdf;

import java.util.ArrayList;
import java.util.List;
import org.xhtmlrenderer.extend.FontContext;
import org.xhtmlrenderer.pdf.ITextFSFont;
import org.xhtmlrenderer.pdf.ITextTextRenderer;
import org.xhtmlrenderer.render.FSFont;
import org.xhtmlrenderer.render.FSFontMetrics;
import pilefolio.output.pdf.face.Typeface;

/** Measures text and notes every character that the face would drop without a word. */
final class WatchingText extends ITextTextRenderer {

  /**
   * A character that a face lacks.
   *
   * @param text the text it stands in
   * @param codePoint the character
   */
  record Missing(String text, int codePoint) {}

  /** Part of the letter size above the base line. */
  static final float ASCENT = 0.76f;

  private final List<Missing> missing = new ArrayList<>();

  @Override
  public int getWidth(FontContext context, FSFont font, String text) {
    Typeface face = Typeface.of(((ITextFSFont) font).getFontDescription().getFont());
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c >= ' ' && c < 127) {
        continue;
      }
      int cp = text.codePointAt(i);
      if (!Character.isISOControl(cp) && !face.shows(cp)) {
        missing.add(new Missing(text, cp));
      }
      i += Character.charCount(cp) - 1;
    }
    return super.getWidth(context, font, text);
  }

  /**
   * Height of the letters as the layout takes it. The font's own box is taller than a line of its
   * size; text at the head of a page would then be drawn once more, unseen, on the page before, and
   * scripts would hang too low.
   */
  @Override
  public FSFontMetrics getFSFontMetrics(FontContext context, FSFont font, String text) {
    FSFontMetrics own = super.getFSFontMetrics(context, font, text);
    float size = font.getSize2D();
    return new Metrics(
        size * ASCENT,
        size * (1 - ASCENT),
        own.getStrikethroughOffset(),
        own.getStrikethroughThickness(),
        own.getUnderlineOffset(),
        own.getUnderlineThickness());
  }

  /** Measures of a font at a size, in the renderer's dots. */
  private record Metrics(
      float ascent,
      float descent,
      float strikethroughOffset,
      float strikethroughThickness,
      float underlineOffset,
      float underlineThickness)
      implements FSFontMetrics {
    @Override
    public float getAscent() {
      return ascent;
    }

    @Override
    public float getDescent() {
      return descent;
    }

    @Override
    public float getStrikethroughOffset() {
      return strikethroughOffset;
    }

    @Override
    public float getStrikethroughThickness() {
      return strikethroughThickness;
    }

    @Override
    public float getUnderlineOffset() {
      return underlineOffset;
    }

    @Override
    public float getUnderlineThickness() {
      return underlineThickness;
    }
  }

  List<Missing> missing() {
    return missing;
  }
}
