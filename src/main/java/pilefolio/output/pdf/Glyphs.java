package pilefolio.output.pdf;

import java.util.Locale;

/** Names characters in messages. */
final class Glyphs {
  private Glyphs() {}

  static String name(int codePoint) {
    return "\"%s\" U+%04X".formatted(Character.toString(codePoint), codePoint)
        + " "
        + String.valueOf(Character.getName(codePoint)).toLowerCase(Locale.ROOT);
  }
}
