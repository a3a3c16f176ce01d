package pilefolio.output.pdf;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import pilefolio.output.figure.Figure;

/**
 * Everything that goes into one document.
 *
 * @param xhtml well-formed XHTML without document type
 * @param info what the file says about itself
 * @param paper sheet size
 * @param figures the figures the text refers to
 * @param attachments files to attach, asked for when the pages are known, so that an attached file
 *     can name pages
 * @param stamp a word printed large and pale behind every page, such as DRAFT
 */
public record PdfOrder(
    String xhtml,
    DocumentInfo info,
    Paper paper,
    List<Figure> figures,
    Function<PageIndex, List<Attachment>> attachments,
    Optional<String> stamp) {

  /** Copies the list of figures. */
  public PdfOrder {
    figures = List.copyOf(figures);
  }

  /** A document without figures, attachments and stamp. */
  public static PdfOrder of(String xhtml, DocumentInfo info, Paper paper) {
    return new PdfOrder(xhtml, info, paper, List.of(), pages -> List.of(), Optional.empty());
  }

  /** The same with figures. */
  public PdfOrder figures(List<? extends Figure> some) {
    return new PdfOrder(xhtml, info, paper, List.copyOf(some), attachments, stamp);
  }

  /** The same with files attached. */
  public PdfOrder attach(Function<PageIndex, List<Attachment>> some) {
    return new PdfOrder(xhtml, info, paper, figures, some, stamp);
  }

  /** The same with a word behind every page. */
  public PdfOrder stamped(String word) {
    return new PdfOrder(xhtml, info, paper, figures, attachments, Optional.of(word));
  }
}
