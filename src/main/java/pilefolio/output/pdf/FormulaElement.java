package pilefolio.output.pdf;

import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfObject;
import com.lowagie.text.pdf.PdfString;
import java.awt.Color;
import java.util.List;
import org.xhtmlrenderer.css.parser.FSColor;
import org.xhtmlrenderer.css.parser.FSRGBColor;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.render.BlockBox;
import org.xhtmlrenderer.render.RenderingContext;
import pilefolio.output.pdf.math.MathBox;

/**
 * A formula standing in the text. It is real text, wrapped in its plain wording, so that a search
 * or a copy gives the formula on one line.
 */
final class FormulaElement extends DrawnElement {
  private final MathBox box;
  private final String plain;

  FormulaElement(MathBox box, String plain, double dotsPerPoint) {
    super(
        (int) Math.ceil(box.width() * dotsPerPoint),
        (int) Math.ceil(box.extent() * dotsPerPoint),
        (int) Math.round(box.height() * dotsPerPoint));
    this.box = box;
    this.plain = plain;
  }

  @Override
  public void paint(RenderingContext c, ITextOutputDevice device, BlockBox block) {
    PdfContentByte page = device.getCurrentPage();
    Corner corner = corner(c, device, block);
    double x = corner.x();
    double y = corner.y() - box.height();
    page.saveState();
    PdfDictionary properties = new PdfDictionary();
    properties.put(PdfName.ACTUALTEXT, new PdfString(plain, PdfObject.TEXT_UNICODE));
    page.beginMarkedContentSequence(new PdfName("Span"), properties, true);
    Color ink = colour(block.getStyle().getColor());
    page.setColorFill(ink);
    page.setColorStroke(ink);
    page.setLineJoin(PdfContentByte.LINE_JOIN_MITER);
    page.setLineCap(PdfContentByte.LINE_CAP_BUTT);
    page.setLineDash(0);
    box.marks().forEach(mark -> draw(page, mark, x, y));
    page.endMarkedContentSequence();
    page.restoreState();
  }

  private static void draw(PdfContentByte page, MathBox.Mark mark, double x, double y) {
    if (mark instanceof MathBox.Glyphs glyphs) {
      page.beginText();
      page.setFontAndSize(glyphs.face().font(), (float) glyphs.sizePt());
      page.setTextMatrix((float) (x + glyphs.x()), (float) (y + glyphs.y()));
      page.showText(glyphs.text());
      page.endText();
    } else if (mark instanceof MathBox.Bar bar) {
      page.rectangle(
          (float) (x + bar.x()), (float) (y + bar.y()), (float) bar.width(), (float) bar.height());
      page.fill();
    } else if (mark instanceof MathBox.Strokes strokes) {
      page.setLineWidth((float) strokes.pen());
      List<Double> xy = strokes.xy();
      page.moveTo(f(x, xy, 0), f(y, xy, 1));
      for (int i = 2; i < xy.size(); i += 2) {
        page.lineTo(f(x, xy, i), f(y, xy, i + 1));
      }
      page.stroke();
    } else if (mark instanceof MathBox.Curve curve) {
      List<Double> xy = curve.xy();
      page.moveTo(f(x, xy, 0), f(y, xy, 1));
      for (int i = 2; i + 5 < xy.size(); i += 6) {
        page.curveTo(
            f(x, xy, i),
            f(y, xy, i + 1),
            f(x, xy, i + 2),
            f(y, xy, i + 3),
            f(x, xy, i + 4),
            f(y, xy, i + 5));
      }
      if (curve.pen() == 0) {
        page.fill();
      } else {
        page.setLineWidth((float) curve.pen());
        page.stroke();
      }
    }
  }

  private static float f(double origin, List<Double> xy, int index) {
    return (float) (origin + xy.get(index));
  }

  private static Color colour(FSColor colour) {
    return colour instanceof FSRGBColor rgb
        ? new Color(rgb.getRed(), rgb.getGreen(), rgb.getBlue())
        : Color.BLACK;
  }
}
