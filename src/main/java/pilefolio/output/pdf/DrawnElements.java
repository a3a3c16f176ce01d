package pilefolio.output.pdf;

import java.util.Map;
import org.w3c.dom.Element;
import org.xhtmlrenderer.extend.ReplacedElement;
import org.xhtmlrenderer.extend.UserAgentCallback;
import org.xhtmlrenderer.layout.LayoutContext;
import org.xhtmlrenderer.pdf.ITextFSFont;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.pdf.ITextReplacedElementFactory;
import org.xhtmlrenderer.render.BlockBox;
import pilefolio.output.figure.Figure;
import pilefolio.output.pdf.math.MathBox;
import pilefolio.output.pdf.math.MathLayout;
import pilefolio.output.pdf.math.Tex;
import pilefolio.output.pdf.math.TexParser;
import pilefolio.output.pdf.math.TexSyntaxException;

/** Makes the drawings that stand for {@code math} and {@code object} elements. */
final class DrawnElements extends ITextReplacedElementFactory {
  private static final double POINTS_PER_MM = 72 / 25.4;

  /** Space above and below a formula as a part of its letter size. */
  private static final double AIR = 0.11;

  /** Least size of a formula that no break makes narrow enough, as a share of its usual size. */
  private static final double LEAST_SCALE = 0.65;

  private final Map<String, Figure> figures;
  private final Faults faults;
  private final double dotsPerPoint;

  DrawnElements(ITextOutputDevice device, Map<String, Figure> figures, Faults faults) {
    super(device);
    this.figures = Map.copyOf(figures);
    this.faults = faults;
    this.dotsPerPoint = device.getDotsPerPoint();
  }

  @Override
  public ReplacedElement createReplacedElement(
      LayoutContext c, BlockBox box, UserAgentCallback agent, int cssWidth, int cssHeight) {
    Element element = box.getElement();
    if (element == null) {
      return null;
    }
    return switch (element.getNodeName()) {
      case "math" -> formula(c, box, element, cssWidth);
      case "object" -> figure(box, element, cssWidth, cssHeight);
      default -> super.createReplacedElement(c, box, agent, cssWidth, cssHeight);
    };
  }

  private ReplacedElement formula(LayoutContext c, BlockBox box, Element element, int cssWidth) {
    String tex = element.getAttribute("tex");
    double size = ((ITextFSFont) box.getStyle().getFSFont(c)).getSize2D() / dotsPerPoint;
    MathBox set;
    try {
      Tex formula = TexParser.parse(tex);
      // While a table looks for its column widths there is no width yet.
      int room = cssWidth > 0 ? cssWidth : box.getContentWidth();
      set =
          room > 0
              ? fitting(formula, size, room / dotsPerPoint, element)
              : layout(size, element).layout(formula);
      // At least as tall as a line of text, or the renderer loses the base line of the table row;
      // and with a little air, as lines of formulas stand directly on each other.
      double line = box.getStyle().getLineHeight(c) / dotsPerPoint;
      double above = (line - size) / 2 + size * WatchingText.ASCENT;
      set =
          new MathBox(
              set.width(),
              Math.max(set.height() + size * AIR, above),
              Math.max(set.depth() + size * AIR, line - above),
              set.marks());
    } catch (TexSyntaxException e) {
      faults.add(PrintFault.Kind.BAD_FORMULA, element, e.getMessage());
      set = MathBox.EMPTY;
    }
    return new FormulaElement(set, element.getAttribute("alt"), dotsPerPoint);
  }

  /** Sets a formula; one that no line break makes narrow enough is set smaller, within reason. */
  private MathBox fitting(Tex formula, double size, double room, Element element) {
    MathBox set = layout(size, element).layout(formula, room);
    if (set.width() <= room) {
      return set;
    }
    double smaller = size * Math.max(LEAST_SCALE, room / set.width() * 0.99);
    return layout(smaller, element).layout(formula, room);
  }

  private MathLayout layout(double size, Element element) {
    return new MathLayout(
        size,
        (face, cp) ->
            faults.add(
                PrintFault.Kind.MISSING_GLYPH,
                element,
                Glyphs.name(cp) + " in formula " + element.getAttribute("tex")));
  }

  private ReplacedElement figure(BlockBox box, Element element, int cssWidth, int cssHeight) {
    Figure figure = figures.get(element.getAttribute("data"));
    if (figure == null) {
      // Reported when the source is inspected.
      return null;
    }
    double own = figure.widthMm() * POINTS_PER_MM * dotsPerPoint;
    double tall = figure.heightMm() * POINTS_PER_MM * dotsPerPoint;
    double scale = 1;
    if (cssWidth > 0) {
      scale = cssWidth / own;
    } else if (cssHeight > 0) {
      scale = cssHeight / tall;
    } else if (box.getContentWidth() > 0 && box.getContentWidth() < own) {
      scale = box.getContentWidth() / own;
    }
    return new FigureElement(figure, element, faults, scale, dotsPerPoint);
  }
}
