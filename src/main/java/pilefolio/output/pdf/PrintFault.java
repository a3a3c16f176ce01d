package pilefolio.output.pdf;

/**
 * Something that would have been lost or wrong on paper.
 *
 * @param kind what went wrong
 * @param where the element: its own id or that of the nearest element around it, with names
 * @param text the text or name concerned
 */
public record PrintFault(Kind kind, String where, String text) {

  /** What can go wrong on the way to paper. */
  public enum Kind {
    /** The XHTML is not well-formed or has a document type. */
    MALFORMED("not well-formed XHTML"),
    /** A face lacks a character. */
    MISSING_GLYPH("character missing in the font"),
    /** A style sheet names a font that is not embedded. */
    UNKNOWN_FONT("font family not available"),
    /** Text or a drawing reaches past the page or its table cell. */
    OVERFLOW("does not fit"),
    /** A figure is higher than the page or was cut by a page end. */
    SPLIT("cut by the end of a page"),
    /** The document refers to a figure that was not given. */
    MISSING_FIGURE("figure not given"),
    /** A link or bookmark leads nowhere. */
    MISSING_TARGET("link target missing"),
    /** Two elements have the same id. */
    DUPLICATE_ID("id used twice"),
    /** A formula cannot be read. */
    BAD_FORMULA("formula cannot be read"),
    /** A style sheet or picture is missing or lies outside the template folder. */
    MISSING_RESOURCE("file not found among the templates"),
    /** A style sheet has an error. */
    BAD_STYLE("error in the style sheet");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    /** In words. */
    public String words() {
      return words;
    }
  }

  @Override
  public String toString() {
    return kind.words + ": " + text + " (" + where + ")";
  }
}
