package pilefolio.workbook;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import pilefolio.findings.CellRef;
import pilefolio.model.Value;
import pilefolio.units.Dimension;
import pilefolio.units.DisplaySystem;
import pilefolio.units.NumberText;
import pilefolio.units.Unit;
import pilefolio.units.Units;

/**
 * A column of numbers.
 *
 * @param name name in the head row
 * @param unit unit of an SI workbook; limits, default and example are stated in it
 * @param usUnit unit of a US workbook
 * @param hard limits outside which a number is refused
 * @param usual limits outside which a number is questioned
 * @param need whether a cell must be filled in
 * @param fallback the default, if there is one
 * @param whole true for counts
 * @param meaning what is meant
 * @param example an example
 */
public record NumberColumn(
    String name,
    Unit unit,
    Unit usUnit,
    Range hard,
    Range usual,
    Need need,
    OptionalDouble fallback,
    boolean whole,
    String meaning,
    String example)
    implements Column<Value> {

  /** Standard acceleration of gravity, m/s²: a mass given in lb or kip is a weight. */
  private static final double GRAVITY = 9.80665;

  private static final Dimension ACCELERATION = Dimension.FORCE.over(Dimension.MASS);
  private static final Pattern PLAIN =
      Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d+)?");
  private static final Pattern WITH_COMMA = Pattern.compile("[+-]?[\\d .']*,[\\d., ]*\\d");
  private static final Pattern RATIO = Pattern.compile("1\\s*(:|in)\\s*\\d+(\\.\\d+)?");
  private static final Pattern BLOWS = Pattern.compile("\\d+\\s*/\\s*\\d+\\s*(mm|cm|in|\")?");

  /** An optional number without limits. */
  static NumberColumn number(String name, String unit, String meaning) {
    Unit si = Units.find(unit).orElseThrow(() -> new IllegalArgumentException(unit));
    return new NumberColumn(
        name,
        si,
        DisplaySystem.US.of(si),
        Range.ANY,
        Range.ANY,
        Need.OPTIONAL,
        OptionalDouble.empty(),
        false,
        meaning,
        "");
  }

  NumberColumn us(String unit) {
    return with(Units.of(unit), hard, usual, need, fallback, whole, example);
  }

  NumberColumn hard(double low, double high) {
    return with(usUnit, Range.of(unit, low, high), usual, need, fallback, whole, example);
  }

  NumberColumn usual(double low, double high) {
    return with(usUnit, hard, Range.of(unit, low, high), need, fallback, whole, example);
  }

  NumberColumn required() {
    return with(usUnit, hard, usual, Need.REQUIRED, fallback, whole, example);
  }

  NumberColumn sized() {
    return with(usUnit, hard, usual, Need.SIZED, fallback, whole, example);
  }

  NumberColumn standard(double value) {
    return with(usUnit, hard, usual, Need.DEFAULTED, OptionalDouble.of(value), whole, example);
  }

  NumberColumn count() {
    return with(usUnit, hard, usual, need, fallback, true, example);
  }

  NumberColumn such(String text) {
    return with(usUnit, hard, usual, need, fallback, whole, text);
  }

  private NumberColumn with(
      Unit us,
      Range hardLimits,
      Range usualLimits,
      Need needed,
      OptionalDouble standard,
      boolean wholes,
      String such) {
    return new NumberColumn(
        name, unit, us, hardLimits, usualLimits, needed, standard, wholes, meaning, such);
  }

  /** True if the column has a unit that must be stated in the unit row. */
  public boolean hasUnit() {
    return !unit.symbol().isEmpty();
  }

  /** The unit in a workbook of the given system. */
  public Unit unit(DisplaySystem system) {
    return system == DisplaySystem.US ? usUnit : unit;
  }

  /**
   * The unit as typed, made to fit: where a mass is wanted, a weight in lb or kip is taken.
   *
   * @return empty if it does not fit
   */
  Optional<Unit> fitting(Unit typed) {
    if (typed.fits(unit)) {
      // A column in kelvin holds a difference of temperatures, which has no zero to start from.
      boolean difference = unit.symbol().equals("K");
      return Optional.of(
          difference ? Unit.of(typed.symbol(), typed.dimension(), typed.factor()) : typed);
    }
    if (typed.dimension().equals(unit.dimension().times(ACCELERATION))) {
      return Optional.of(Unit.of(typed.symbol(), unit.dimension(), typed.factor() / GRAVITY));
    }
    return Optional.empty();
  }

  /** The example in a unit. */
  String example(Unit in) {
    if (example.isEmpty() && fallback.isEmpty()) {
      return "";
    }
    double number = example.isEmpty() ? fallback.getAsDouble() : Double.parseDouble(example);
    if (in.symbol().equals(unit.symbol())) {
      return example.isEmpty() ? NumberText.significant(number, 6) : example;
    }
    double si = unit.toSi(number);
    return NumberText.significant(in.fromSi(si), 3).replace('−', '-');
  }

  @Override
  public String expected(Unit in) {
    StringBuilder text = new StringBuilder(name);
    if (hard.isLimited()) {
      text.append(" is ").append(hard.text(in));
    } else {
      text.append(" is a number").append(in.symbol().isEmpty() ? "" : " in " + in.symbol());
    }
    if (!example.isEmpty()) {
      text.append(", such as ").append(example(in));
    }
    return text.toString();
  }

  @Override
  public Optional<Value> read(CellContent content, Place place) {
    if (content instanceof CellContent.Figure figure) {
      if (figure.date()) {
        place.report(
            FindingKind.DATE_IN_NUMBER_CELL,
            name + " holds a date or a time",
            "format the cell as a number and type it again; " + expected(place.unit()));
        return Optional.empty();
      }
      return figure.percent() ? percent(figure.value(), place) : checked(figure.value(), place);
    }
    if (content instanceof CellContent.Words words) {
      return fromText(words.text(), place);
    }
    place.report(FindingKind.NOT_A_NUMBER, name + " holds TRUE or FALSE", expected(place.unit()));
    return Optional.empty();
  }

  private Optional<Value> percent(double value, Place place) {
    if (!unit.dimension().isNone() || unit.equals(Units.DEG)) {
      place.report(
          FindingKind.PERCENT_FORMAT,
          name + " is shown as per cent",
          "format the cell as a number; " + expected(place.unit()));
      return Optional.empty();
    }
    return checked(place.unit().symbol().equals("%") ? value * 100 : value, place);
  }

  private Optional<Value> fromText(String typed, Place place) {
    String text = typed.strip().replace('−', '-').replace("\u00a0", "");
    if (PLAIN.matcher(text).matches()) {
      place.report(
          FindingKind.NUMBER_AS_TEXT,
          name + " " + text + " is stored as text",
          "it is read as the number; format the cell as a number and type it again");
      return checked(Double.parseDouble(text), place);
    }
    String found = name + " is the text \"" + shortened(typed) + "\"";
    if (WITH_COMMA.matcher(text).matches()) {
      place.report(
          FindingKind.COMMA_DECIMAL,
          found,
          "type a number with a point and without separators; " + expected(place.unit()));
    } else if (RATIO.matcher(text.toLowerCase(Locale.ROOT)).matches()) {
      place.report(
          FindingKind.RATIO_TYPED,
          found,
          "type only the number after the colon; " + expected(place.unit()));
    } else if (BLOWS.matcher(text).matches()) {
      place.report(
          FindingKind.BLOWS_PER_PENETRATION,
          found,
          "a refusal is not a count; type the corrected count or leave the cell empty");
    } else {
      place.report(FindingKind.NOT_A_NUMBER, found, expected(place.unit()));
    }
    return Optional.empty();
  }

  static String shortened(String text) {
    String clean = text.replaceAll("\\p{Cntrl}", "?");
    return clean.length() <= 40 ? clean : clean.substring(0, 39) + "…";
  }

  private Optional<Value> checked(double entered, Place place) {
    Unit in = place.unit();
    double si = in.toSi(entered);
    String found = name + " " + plain(entered) + Range.spaced(in);
    if (!Double.isFinite(si)) {
      place.report(FindingKind.NOT_A_NUMBER, name + " is not a finite number", expected(in));
      return Optional.empty();
    }
    if (!hard.contains(si)) {
      place.report(
          FindingKind.OUT_OF_RANGE,
          found + " is outside " + hard.text(in),
          UnitHint.find(entered, in, usual.isLimited() ? usual : hard)
              .orElseGet(() -> expected(in)));
      return Optional.empty();
    }
    if (whole && si != Math.rint(si)) {
      place.report(FindingKind.NOT_WHOLE, found + " is not a whole number", expected(in));
      return Optional.empty();
    }
    if (!usual.contains(si)) {
      place.report(
          FindingKind.UNUSUAL_VALUE,
          found + " is outside the usual " + usual.text(in),
          UnitHint.find(entered, in, usual)
              .orElse("it is used as it stands; state the reason in the documents"));
    }
    return Optional.of(Value.entered(entered, in, place.at(), name));
  }

  private static String plain(double value) {
    return Double.isFinite(value) ? NumberText.significant(value, 6) : String.valueOf(value);
  }

  @Override
  public Optional<Value> standard(CellRef cell) {
    return fallback.isPresent()
        ? Optional.of(Value.assumed(fallback.getAsDouble(), unit, cell, name))
        : Optional.empty();
  }

  /** The default in the unit of a workbook of the given system. */
  String standardText(DisplaySystem system) {
    Unit in = unit(system);
    if (fallback.isEmpty() || in.equals(unit)) {
      return standardText();
    }
    return NumberText.significant(in.fromSi(unit.toSi(fallback.getAsDouble())), 3)
        + Range.spaced(in);
  }

  /** The default as it is defined, and in the unit of documents in the given system beside it. */
  String standardFor(DisplaySystem documents) {
    String other = standardText(documents);
    return other.equals(standardText()) ? other : standardText() + " (" + other + ")";
  }

  @Override
  public String standardText() {
    if (fallback.isEmpty()) {
      return "";
    }
    String number = NumberText.significant(fallback.getAsDouble(), 6);
    return number + Range.spaced(unit);
  }
}
