package pilefolio.output.pdf;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.w3c.dom.Element;
import org.xhtmlrenderer.css.style.CssContext;
import org.xhtmlrenderer.layout.Layer;
import org.xhtmlrenderer.newtable.TableCellBox;
import org.xhtmlrenderer.render.BlockBox;
import org.xhtmlrenderer.render.Box;
import org.xhtmlrenderer.render.InlineLayoutBox;
import org.xhtmlrenderer.render.InlineText;
import org.xhtmlrenderer.render.LineBox;
import org.xhtmlrenderer.render.PageBox;

/**
 * Looks at everything after layout: what reaches past the page or its table cell would be cut or
 * run into its neighbour, what stands across a page end would be cut in two, and a character the
 * face lacks would be missing.
 */
final class PageInspection {
  private static final double SLACK_POINTS = 0.75;

  private final CssContext context;
  private final Layer layer;
  private final Faults faults;
  private final int slack;
  private final Set<String> suspects = new HashSet<>();
  private final Set<WatchingText.Missing> unplaced;

  PageInspection(
      CssContext context,
      Layer layer,
      double dotsPerPoint,
      List<WatchingText.Missing> missing,
      Faults faults) {
    this.context = context;
    this.layer = layer;
    this.faults = faults;
    this.slack = (int) (SLACK_POINTS * dotsPerPoint);
    this.unplaced = new HashSet<>(missing);
    for (WatchingText.Missing m : missing) {
      suspects.add(Character.toString(m.codePoint()));
    }
  }

  void inspect(Box root) {
    walk(root, null, Integer.MAX_VALUE / 2);
    // What was measured but stands nowhere in the flow belongs to a page header or footer.
    unplaced.stream()
        .sorted(
            java.util.Comparator.comparing(WatchingText.Missing::text)
                .thenComparing(WatchingText.Missing::codePoint))
        .forEach(
            m ->
                faults.add(
                    PrintFault.Kind.MISSING_GLYPH,
                    "page header or footer",
                    Glyphs.name(m.codePoint()) + " in " + m.text()));
  }

  private void walk(Box box, Element around, int cellRight) {
    Element element = box.getElement() != null ? box.getElement() : around;
    int limit = cellRight;
    if (box instanceof TableCellBox cell) {
      limit = Math.min(limit, cell.getAbsX() + cell.getWidth());
    }
    if (box instanceof BlockBox block && block.isReplaced()) {
      inspectDrawn(block, element, limit);
    }
    if (box instanceof InlineLayoutBox inline) {
      for (Object child : inline.getInlineChildren()) {
        if (child instanceof InlineText text) {
          inspectText(inline, text, element, limit);
        } else if (child instanceof Box childBox) {
          walk(childBox, element, limit);
        }
      }
    }
    if (box instanceof LineBox line) {
      for (Box item : line.getNonFlowContent()) {
        walk(item, element, limit);
      }
    }
    for (int i = 0; i < box.getChildCount(); i++) {
      walk(box.getChild(i), element, limit);
    }
  }

  private void inspectText(InlineLayoutBox inline, InlineText text, Element element, int limit) {
    String shown = text.getSubstring();
    if (shown.isBlank()) {
      return;
    }
    int left = inline.getAbsX() + text.getX();
    check(element, shown, left, left + text.getWidth(), inline.getAbsY(), limit);
    if (!suspects.isEmpty()) {
      for (String suspect : suspects) {
        if (shown.contains(suspect)) {
          int cp = suspect.codePointAt(0);
          unplaced.removeIf(m -> m.codePoint() == cp);
          faults.add(
              PrintFault.Kind.MISSING_GLYPH, element, Glyphs.name(cp) + " in " + shown.strip());
        }
      }
    }
  }

  private void inspectDrawn(BlockBox block, Element element, int limit) {
    String name = describe(element);
    int top = block.getAbsY();
    check(element, name, block.getAbsX(), block.getAbsX() + block.getWidth(), top, limit);
    PageBox first = layer.getPage(context, top);
    if (first != null && top + block.getHeight() > first.getBottom() + slack) {
      faults.add(PrintFault.Kind.SPLIT, element, name);
    }
  }

  private static String describe(Element element) {
    if (element.getNodeName().equals("math")) {
      return "formula " + element.getAttribute("alt");
    }
    return element.getNodeName() + " " + element.getAttribute("data");
  }

  private void check(Element element, String text, int left, int right, int y, int limit) {
    PageBox page = layer.getPage(context, y);
    if (page == null) {
      return;
    }
    int width = page.getContentWidth(context);
    if (right > width + slack || left < -slack) {
      faults.add(PrintFault.Kind.OVERFLOW, element, text);
    } else if (right > limit + slack) {
      faults.add(PrintFault.Kind.OVERFLOW, element, text + " (wider than its column)");
    }
  }
}
