package pilefolio.output.pdf;

import com.lowagie.text.Document;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfPageEventHelper;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfTemplate;
import com.lowagie.text.pdf.PdfWriter;
import java.awt.Color;
import pilefolio.output.pdf.face.Typeface;

/**
 * A word printed large, pale and as outlines behind every page. It is marked as having no wording
 * of its own, so that a copy of the page's text does not pick it up.
 */
final class Stamp extends PdfPageEventHelper {
  private static final float SIZE = 120;

  private final String word;
  private PdfTemplate drawn;

  Stamp(String word) {
    this.word = word;
  }

  @Override
  public void onEndPage(PdfWriter writer, Document document) {
    PdfContentByte under = writer.getDirectContentUnder();
    float width = document.getPageSize().getWidth();
    float height = document.getPageSize().getHeight();
    float length = (float) Typeface.SANS_BOLD.width(word, SIZE);
    if (drawn == null) {
      drawn = under.createTemplate(length, SIZE);
      PdfDictionary silent = new PdfDictionary();
      silent.put(PdfName.ACTUALTEXT, new PdfString(""));
      drawn.beginMarkedContentSequence(new PdfName("Span"), silent, true);
      drawn.setColorStroke(new Color(0xD5, 0xD9, 0xDB));
      drawn.setLineWidth(1);
      drawn.beginText();
      drawn.setTextRenderingMode(PdfContentByte.TEXT_RENDER_MODE_STROKE);
      drawn.setFontAndSize(Typeface.SANS_BOLD.font(), SIZE);
      drawn.setTextMatrix(0, SIZE * 0.25f);
      drawn.showText(word);
      drawn.endText();
      drawn.endMarkedContentSequence();
    }
    double angle = Math.atan2(height, width);
    float scale = (float) Math.min(1, Math.hypot(width, height) * 0.62 / length);
    float c = (float) Math.cos(angle) * scale;
    float s = (float) Math.sin(angle) * scale;
    float x = width / 2 - length / 2 * c + SIZE * 0.6f * s;
    float y = height / 2 - length / 2 * s - SIZE * 0.6f * c;
    under.addTemplate(drawn, c, s, -s, c, x, y);
  }
}
