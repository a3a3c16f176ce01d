package pilefolio.output.pdf;

import com.lowagie.text.DocumentException;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xhtmlrenderer.layout.LayoutContext;
import org.xhtmlrenderer.layout.SharedContext;
import org.xhtmlrenderer.pdf.ITextFontContext;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.pdf.ITextRenderer;
import org.xhtmlrenderer.render.BlockBox;
import org.xhtmlrenderer.render.Box;
import org.xhtmlrenderer.render.PageBox;
import org.xhtmlrenderer.util.XRRuntimeException;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import pilefolio.output.figure.Figure;

/**
 * Prints XHTML to a PDF file for the archive (PDF/A-3u). The same order gives the same bytes. What
 * would be lost silently on the way (a character the face lacks, text past the edge, a missing
 * figure or link target) fails the order instead, with every fault told at once.
 */
public final class PdfRenderer {
  private static final float DOTS_PER_POINT = ITextRenderer.DEFAULT_DOTS_PER_POINT;
  private static final int DOTS_PER_PIXEL = ITextRenderer.DEFAULT_DOTS_PER_PIXEL;

  private final TemplateSource templates;

  /** Prints with style sheets and pictures from a source. Safe to use from several threads. */
  public PdfRenderer(TemplateSource templates) {
    this.templates = templates;
  }

  /**
   * Prints one document.
   *
   * @throws PrintFaultException when anything would be lost or wrong on paper
   */
  public RenderedPdf render(PdfOrder order) {
    Faults faults = new Faults();
    Document document = parse(order.xhtml(), faults);
    addPaper(document, order.paper());
    LongWords.mark(document);
    Map<String, Figure> figures = new LinkedHashMap<>();
    order.figures().forEach(figure -> figures.put(figure.id(), figure));
    new SourceInspection(figures.keySet(), faults).inspect(document);

    ITextOutputDevice device = new ITextOutputDevice(DOTS_PER_POINT);
    TemplateAgent agent = new TemplateAgent(device, DOTS_PER_PIXEL, templates, faults);
    WatchingText text = new WatchingText();
    ITextRenderer renderer =
        new ITextRenderer(
            DOTS_PER_POINT,
            DOTS_PER_PIXEL,
            device,
            agent,
            new FaceResolver(faults),
            new DrawnElements(device, figures, faults),
            text);
    try {
      renderer.setDocument(document, null);
      renderer.layout();
    } catch (XRRuntimeException e) {
      // The renderer stumbles over some values of properties that it reads without complaint.
      faults.add(PrintFault.Kind.BAD_STYLE, "layout", String.valueOf(e.getMessage()));
      faults.throwIfAny();
    }
    inspect(renderer, text, faults);
    faults.throwIfAny();

    PageIndex pages = pages(renderer);
    List<Attachment> attachments = order.attachments().apply(pages);
    renderer.setListener(
        new ArchiveWriter(order.info(), attachments, fileId(order, agent, attachments)));
    order.stamp().ifPresent(word -> renderer.setPdfPageEvent(new Stamp(word)));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      renderer.createPDF(out);
    } catch (DocumentException e) {
      throw new IllegalStateException("the PDF writer failed", e);
    }
    // Drawing can find faults as well: a label past the edge of its figure.
    faults.throwIfAny();
    return new RenderedPdf(out.toByteArray(), pages);
  }

  private static Document parse(String xhtml, Faults faults) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
      factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
      factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
      factory.setXIncludeAware(false);
      factory.setNamespaceAware(false);
      var builder = factory.newDocumentBuilder();
      builder.setErrorHandler(new Rethrow());
      return builder.parse(new InputSource(new StringReader(xhtml)));
    } catch (SAXParseException e) {
      faults.add(
          PrintFault.Kind.MALFORMED,
          "line " + e.getLineNumber() + ", column " + e.getColumnNumber(),
          e.getMessage());
    } catch (SAXException e) {
      faults.add(PrintFault.Kind.MALFORMED, "document", String.valueOf(e.getMessage()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (ParserConfigurationException e) {
      throw new IllegalStateException(e);
    }
    throw new PrintFaultException(faults.list());
  }

  /** Keeps the parser from printing errors on the console. */
  private static final class Rethrow implements ErrorHandler {
    @Override
    public void warning(SAXParseException e) {
      // A warning does not change the document.
    }

    @Override
    public void error(SAXParseException e) throws SAXException {
      throw e;
    }

    @Override
    public void fatalError(SAXParseException e) throws SAXException {
      throw e;
    }
  }

  private static void addPaper(Document document, Paper paper) {
    Element head = (Element) document.getElementsByTagName("head").item(0);
    if (head == null) {
      head = document.createElement("head");
      document
          .getDocumentElement()
          .insertBefore(head, document.getDocumentElement().getFirstChild());
    }
    Element link = document.createElement("link");
    link.setAttribute("rel", "stylesheet");
    link.setAttribute("type", "text/css");
    link.setAttribute("href", paper.stylesheet());
    head.appendChild(link);
  }

  private static void inspect(ITextRenderer renderer, WatchingText text, Faults faults) {
    SharedContext shared = renderer.getSharedContext();
    LayoutContext context = shared.newLayoutContextInstance(new ITextFontContext());
    BlockBox root = renderer.getRootBox();
    new PageInspection(context, root.getLayer(), DOTS_PER_POINT, text.missing(), faults)
        .inspect(root);
  }

  private static PageIndex pages(ITextRenderer renderer) {
    SharedContext shared = renderer.getSharedContext();
    LayoutContext context = shared.newLayoutContextInstance(new ITextFontContext());
    BlockBox root = renderer.getRootBox();
    Map<String, Integer> pages = new TreeMap<>();
    for (Map.Entry<String, Box> entry : shared.getIdMap().entrySet()) {
      PageBox page = root.getLayer().getPage(context, entry.getValue().getAbsY());
      if (page != null) {
        pages.put(entry.getKey(), page.getPageNo() + 1);
      }
    }
    return new PageIndex(root.getLayer().getPages().size(), pages);
  }

  private static byte[] fileId(PdfOrder order, TemplateAgent agent, List<Attachment> attachments) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      digest.update(order.xhtml().getBytes(StandardCharsets.UTF_8));
      digest.update(order.info().toString().getBytes(StandardCharsets.UTF_8));
      digest.update(order.paper().name().getBytes(StandardCharsets.UTF_8));
      agent
          .used()
          .forEach(
              (name, content) -> {
                digest.update(name.getBytes(StandardCharsets.UTF_8));
                digest.update(content);
              });
      for (Attachment attachment : attachments) {
        digest.update(attachment.name().getBytes(StandardCharsets.UTF_8));
        digest.update(attachment.content());
      }
      return Arrays.copyOf(digest.digest(), 16);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
