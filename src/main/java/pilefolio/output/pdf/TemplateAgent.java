package pilefolio.output.pdf;

import java.io.ByteArrayInputStream;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.xhtmlrenderer.css.parser.CSSParser;
import org.xhtmlrenderer.css.sheet.StylesheetInfo.Origin;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.pdf.ITextUserAgent;

/** Lets a document load files of the template source and nothing else. */
final class TemplateAgent extends ITextUserAgent {
  /** What the renderer takes an element to be before any style sheet speaks; its own file. */
  private static final URL BASE_STYLE =
      ITextUserAgent.class.getResource("/resources/css/XhtmlNamespaceHandler.css");

  private final TemplateSource templates;
  private final Faults faults;
  private final Map<String, byte[]> used = new LinkedHashMap<>();

  TemplateAgent(
      ITextOutputDevice device, int dotsPerPixel, TemplateSource templates, Faults faults) {
    super(device, dotsPerPixel);
    this.templates = templates;
    this.faults = faults;
  }

  /** What was read, by name, in order. */
  Map<String, byte[]> used() {
    return used;
  }

  @Override
  public String resolveURI(String uri) {
    return uri;
  }

  @Override
  protected InputStream openStream(String uri) throws IOException {
    if (BASE_STYLE != null && uri.equals(BASE_STYLE.toExternalForm())) {
      return BASE_STYLE.openStream();
    }
    Optional<byte[]> found = templates.read(uri);
    if (found.isEmpty()) {
      faults.add(PrintFault.Kind.MISSING_RESOURCE, "document", uri);
      throw new FileNotFoundException(uri);
    }
    if (used.put(uri, found.get()) == null && uri.toLowerCase(Locale.ROOT).endsWith(".css")) {
      check(uri, new String(found.get(), StandardCharsets.UTF_8));
    }
    return new ByteArrayInputStream(found.get());
  }

  /** Reads a style sheet once more, as the renderer passes over errors without a word. */
  private void check(String name, String css) throws IOException {
    var unused =
        new CSSParser((uri, message) -> faults.add(PrintFault.Kind.BAD_STYLE, name, message))
            .parseStylesheet(name, Origin.AUTHOR, new StringReader(css));
  }
}
