package pilefolio.output.pdf;

import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfTemplate;
import org.w3c.dom.Element;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.render.BlockBox;
import org.xhtmlrenderer.render.RenderingContext;
import pilefolio.output.figure.Figure;

/** A figure standing in the text. */
final class FigureElement extends DrawnElement {
  private static final double POINTS_PER_MM = 72 / 25.4;

  private final Figure figure;
  private final Element element;
  private final Faults faults;
  private final double scale;

  /**
   * A figure.
   *
   * @param scale 1 for the figure's own size
   */
  FigureElement(Figure figure, Element element, Faults faults, double scale, double dotsPerPoint) {
    super(
        (int) Math.ceil(figure.widthMm() * POINTS_PER_MM * scale * dotsPerPoint),
        (int) Math.ceil(figure.heightMm() * POINTS_PER_MM * scale * dotsPerPoint),
        0);
    this.figure = figure;
    this.element = element;
    this.faults = faults;
    this.scale = scale;
  }

  @Override
  public boolean hasBaseline() {
    return false;
  }

  @Override
  public void paint(RenderingContext c, ITextOutputDevice device, BlockBox box) {
    PdfContentByte page = device.getCurrentPage();
    float width = (float) (figure.widthMm() * POINTS_PER_MM);
    float height = (float) (figure.heightMm() * POINTS_PER_MM);
    PdfTemplate sheet = page.createTemplate(width, height);
    PdfCanvas canvas =
        new PdfCanvas(
            sheet,
            figure.widthMm(),
            figure.heightMm(),
            (face, cp) ->
                faults.add(
                    PrintFault.Kind.MISSING_GLYPH,
                    element,
                    Glyphs.name(cp) + " in figure " + figure.id()));
    figure.draw(canvas);
    for (String label : canvas.strayText()) {
      faults.add(
          PrintFault.Kind.OVERFLOW, element, "label \"" + label + "\" of figure " + figure.id());
    }
    Corner corner = corner(c, device, box);
    page.addTemplate(
        sheet,
        (float) scale,
        0,
        0,
        (float) scale,
        (float) corner.x(),
        (float) (corner.y() - height * scale));
  }
}
