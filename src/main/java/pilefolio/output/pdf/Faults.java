package pilefolio.output.pdf;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Collects what is wrong with one document, so that all of it can be told at once. */
final class Faults {
  private static final int TEXT_SHOWN = 60;

  private final Set<PrintFault> found = new LinkedHashSet<>();

  void add(PrintFault.Kind kind, String where, String text) {
    String shown = text.strip().replaceAll("\\s+", " ");
    found.add(
        new PrintFault(
            kind,
            where,
            shown.length() > TEXT_SHOWN ? shown.substring(0, TEXT_SHOWN) + "…" : shown));
  }

  void add(PrintFault.Kind kind, Element element, String text) {
    add(kind, where(element), text);
  }

  void throwIfAny() {
    if (!found.isEmpty()) {
      throw new PrintFaultException(new ArrayList<>(found));
    }
  }

  List<PrintFault> list() {
    return List.copyOf(found);
  }

  /** Names an element by the nearest id and its own name and class. */
  static String where(Element element) {
    if (element == null) {
      return "generated text";
    }
    String own = element.getNodeName();
    if (!element.getAttribute("class").isEmpty()) {
      own += "." + element.getAttribute("class").strip().replaceAll("\\s+", ".");
    }
    for (Node at = element; at instanceof Element e; at = at.getParentNode()) {
      if (!e.getAttribute("id").isEmpty()) {
        String id = "#" + e.getAttribute("id");
        return e == element ? id : id + " " + own;
      }
    }
    return own;
  }
}
