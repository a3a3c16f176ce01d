package pilefolio.output.pdf;

import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Marks the elements that hold a word too long for a narrow cell, so that it may break there.
 * Breaking is not allowed everywhere, since the renderer would then also break short words at a
 * line's end.
 */
final class LongWords {
  private static final int LONGEST = 22;
  private static final String NAME = "long-word";

  private LongWords() {}

  static void mark(Document document) {
    mark(document.getDocumentElement());
  }

  private static void mark(Node node) {
    for (Node child = node.getFirstChild(); child != null; child = child.getNextSibling()) {
      if (child.getNodeType() == Node.TEXT_NODE
          && node instanceof Element element
          && holdsLongWord(child.getNodeValue())) {
        String names = element.getAttribute("class");
        element.setAttribute("class", names.isEmpty() ? NAME : names + " " + NAME);
        continue;
      }
      mark(child);
    }
  }

  private static boolean holdsLongWord(String text) {
    int length = 0;
    for (int i = 0; i < text.length(); i++) {
      length = Character.isWhitespace(text.charAt(i)) ? 0 : length + 1;
      if (length > LONGEST) {
        return true;
      }
    }
    return false;
  }
}
