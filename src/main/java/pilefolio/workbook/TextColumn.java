package pilefolio.workbook;

import java.util.Optional;
import java.util.regex.Pattern;
import pilefolio.findings.CellRef;
import pilefolio.units.Unit;

/**
 * A column of texts, of ids or of references to ids.
 *
 * @param name name in the head row
 * @param role what the text is
 * @param target for a reference, the name of the sheet whose first column it names; else empty
 * @param longest greatest count of characters
 * @param need whether a cell must be filled in
 * @param meaning what is meant
 * @param example an example
 */
public record TextColumn(
    String name, Role role, String target, int longest, Need need, String meaning, String example)
    implements Column<String> {

  /** What a text is. */
  public enum Role {
    /** Words for people. */
    WORDS,
    /** The id of its row. */
    ID,
    /** The id of a row of another sheet. */
    REFERENCE
  }

  private static final int USUAL = 240;
  private static final int ID_LENGTH = 16;
  private static final Pattern ID = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N}._/+ -]*");

  static TextColumn words(String name, String meaning, String example) {
    return new TextColumn(name, Role.WORDS, "", USUAL, Need.OPTIONAL, meaning, example);
  }

  static TextColumn id(String name, String meaning, String example) {
    return new TextColumn(name, Role.ID, "", ID_LENGTH, Need.REQUIRED, meaning, example);
  }

  static TextColumn reference(String name, String target, String meaning, String example) {
    return new TextColumn(name, Role.REFERENCE, target, ID_LENGTH, Need.OPTIONAL, meaning, example);
  }

  /** A reference to a row of a sheet whose first column holds words. */
  static TextColumn nameOf(String name, String target, String meaning, String example) {
    return new TextColumn(name, Role.REFERENCE, target, USUAL, Need.OPTIONAL, meaning, example);
  }

  TextColumn required() {
    return new TextColumn(name, role, target, longest, Need.REQUIRED, meaning, example);
  }

  @Override
  public String expected(Unit unit) {
    return name + " is a text" + (example.isEmpty() ? "" : ", such as " + example);
  }

  @Override
  public Optional<String> read(CellContent content, Place place) {
    String text;
    if (content instanceof CellContent.Words words) {
      text = words.text();
    } else if (content instanceof CellContent.Figure figure && !figure.date()) {
      text = number(figure.value());
      // An id typed as 1.10 becomes the number 1.1, and nobody notices.
      if (text.contains(".")) {
        place.report(
            FindingKind.NOT_TEXT,
            name + " is the number " + text,
            "it is read as the text \"" + text + "\"; format the cell as text");
      }
    } else {
      place.report(
          FindingKind.NOT_TEXT, name + " holds a date or TRUE or FALSE", expected(place.unit()));
      return Optional.empty();
    }
    return checked(text, place);
  }

  private Optional<String> checked(String typed, Place place) {
    String text = typed.replace('\u00a0', ' ').strip();
    if (!text.equals(typed)) {
      place.report(
          FindingKind.STRAY_SPACES,
          name + " \"" + NumberColumn.shortened(text) + "\" has spaces before, after or hard ones",
          "they are left out; type it again without them");
    }
    boolean unprintable =
        text.codePoints().anyMatch(c -> (Character.isISOControl(c) && c != '\n') || isInvisible(c));
    if (unprintable) {
      place.report(
          FindingKind.CONTROL_CHARACTER,
          name
              + " \""
              + NumberColumn.shortened(text)
              + "\" holds characters that cannot be printed",
          "type it again");
      return Optional.empty();
    }
    if (text.length() > longest) {
      place.report(
          FindingKind.TEXT_TOO_LONG,
          name + " has " + text.length() + " characters",
          "at most " + longest + " have room in the documents");
      return Optional.empty();
    }
    if (role == Role.ID && !ID.matcher(text).matches()) {
      place.report(
          FindingKind.BAD_ID,
          name + " \"" + NumberColumn.shortened(text) + "\" is not an id",
          "use letters, digits, space, point, dash, plus, stroke; " + expected(place.unit()));
      return Optional.empty();
    }
    return Optional.of(text);
  }

  private static boolean isInvisible(int c) {
    return c == 0xFEFF
        || (c >= 0x200B && c <= 0x200F)
        || (c >= 0x202A && c <= 0x202E)
        || c == 0xFFFD;
  }

  private static String number(double value) {
    return value == Math.rint(value) && Math.abs(value) < 1e15
        ? String.valueOf((long) value)
        : String.valueOf(value);
  }

  @Override
  public Optional<String> standard(CellRef cell) {
    return Optional.empty();
  }

  @Override
  public String standardText() {
    return "";
  }
}
