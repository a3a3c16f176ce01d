package pilefolio.output.pdf;

import java.util.HashSet;
import java.util.Set;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Checks a document before layout: ids, link targets, figures. */
final class SourceInspection {
  private final Set<String> figures;
  private final Faults faults;
  private final Set<String> ids = new HashSet<>();

  SourceInspection(Set<String> figures, Faults faults) {
    this.figures = figures;
    this.faults = faults;
  }

  void inspect(Document document) {
    collectIds(document.getDocumentElement());
    checkReferences(document.getDocumentElement());
  }

  private void collectIds(Element element) {
    String id = element.getAttribute("id");
    if (!id.isEmpty() && !ids.add(id)) {
      faults.add(PrintFault.Kind.DUPLICATE_ID, element, id);
    }
    for (Node n = element.getFirstChild(); n != null; n = n.getNextSibling()) {
      if (n instanceof Element child) {
        collectIds(child);
      }
    }
  }

  private void checkReferences(Element element) {
    String href = element.getAttribute("href");
    boolean links = element.getNodeName().equals("a") || element.getNodeName().equals("bookmark");
    if (links && href.startsWith("#") && !ids.contains(href.substring(1))) {
      faults.add(PrintFault.Kind.MISSING_TARGET, element, href);
    }
    if (element.getNodeName().equals("object")) {
      String data = element.getAttribute("data");
      if (!figures.contains(data)) {
        faults.add(PrintFault.Kind.MISSING_FIGURE, element, data);
      }
    }
    for (Node n = element.getFirstChild(); n != null; n = n.getNextSibling()) {
      if (n instanceof Element child) {
        checkReferences(child);
      }
    }
  }
}
