package pilefolio.output.figure;

import java.util.ArrayList;
import java.util.List;

/**
 * Text of a label with lowered and raised parts: {@code K_a}, {@code K_{a,h}}, {@code m^2}. A
 * backslash takes the next character as it is.
 *
 * @param parts the text in order
 */
public record Label(List<Part> parts) {

  /** Height of a part against the base line. */
  public enum Place {
    /** On the base line. */
    BASE,
    /** Lowered and smaller. */
    SUB,
    /** Raised and smaller. */
    SUPER
  }

  /**
   * A run of text at one height.
   *
   * @param text the characters
   * @param place the height
   */
  public record Part(String text, Place place) {}

  /** Copies the list. */
  public Label {
    parts = List.copyOf(parts);
  }

  /** Reads the markup; see the class. */
  public static Label parse(String markup) {
    List<Part> parts = new ArrayList<>();
    StringBuilder base = new StringBuilder();
    int i = 0;
    while (i < markup.length()) {
      char c = markup.charAt(i);
      if (c == '\\' && i + 1 < markup.length()) {
        base.append(markup.charAt(i + 1));
        i += 2;
      } else if ((c == '_' || c == '^') && i + 1 < markup.length()) {
        addBase(parts, base);
        Place place = c == '_' ? Place.SUB : Place.SUPER;
        int end = endOfScript(markup, i + 1);
        boolean braced = markup.charAt(i + 1) == '{';
        parts.add(new Part(markup.substring(braced ? i + 2 : i + 1, end), place));
        i = braced ? Math.min(end + 1, markup.length()) : end;
      } else {
        base.append(c);
        i++;
      }
    }
    addBase(parts, base);
    return new Label(parts);
  }

  /** The text with every character that means something to the markup taken as it is. */
  public static String plain(String text) {
    return text.replace("\\", "\\\\").replace("_", "\\_").replace("^", "\\^");
  }

  private static int endOfScript(String markup, int start) {
    if (markup.charAt(start) != '{') {
      return start + 1;
    }
    int close = markup.indexOf('}', start);
    return close < 0 ? markup.length() : close;
  }

  private static void addBase(List<Part> parts, StringBuilder base) {
    if (!base.isEmpty()) {
      parts.add(new Part(base.toString(), Place.BASE));
      base.setLength(0);
    }
  }
}
