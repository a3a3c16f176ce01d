package pilefolio.output.pdf;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.xhtmlrenderer.css.constants.IdentValue;
import org.xhtmlrenderer.css.value.FontSpecification;
import org.xhtmlrenderer.layout.SharedContext;
import org.xhtmlrenderer.pdf.FontDescription;
import org.xhtmlrenderer.pdf.FontFamily;
import org.xhtmlrenderer.pdf.ITextFSFont;
import org.xhtmlrenderer.pdf.ITextFontResolver;
import org.xhtmlrenderer.render.FSFont;
import pilefolio.output.pdf.face.Typeface;

/** Gives the embedded faces to the style sheet and reports families that are not among them. */
final class FaceResolver extends ITextFontResolver {
  private static final int BOLD_FROM = 600;

  private final Map<Typeface, FontDescription> descriptions = new ConcurrentHashMap<>();
  private final Faults faults;

  FaceResolver(Faults faults) {
    this.faults = faults;
  }

  @Override
  public FSFont resolveFont(SharedContext context, FontSpecification wanted) {
    boolean bold = wanted.fontWeight != null && convertWeightToInt(wanted.fontWeight) >= BOLD_FROM;
    boolean italic =
        wanted.fontStyle == IdentValue.ITALIC || wanted.fontStyle == IdentValue.OBLIQUE;
    Optional<Typeface> face = Optional.empty();
    if (wanted.families != null) {
      for (String family : wanted.families) {
        String name = family.replace("\"", "").replace("'", "");
        Optional<Typeface> found = Typeface.find(name, bold, italic);
        if (found.isEmpty()) {
          faults.add(PrintFault.Kind.UNKNOWN_FONT, "style sheet", name);
        } else if (face.isEmpty()) {
          face = found;
        }
      }
    }
    Typeface chosen = face.or(() -> Typeface.find("serif", bold, italic)).orElseThrow();
    return new ITextFSFont(
        descriptions.computeIfAbsent(chosen, FaceResolver::describe), wanted.size);
  }

  private static FontDescription describe(Typeface face) {
    return new FontDescription(
        face.font(),
        face.isItalic() ? IdentValue.ITALIC : IdentValue.NORMAL,
        face.isBold() ? 700 : 400);
  }

  @Override
  protected Map<String, FontFamily> loadFonts() {
    return new HashMap<>();
  }
}
