package pilefolio.submittal.figure;

import pilefolio.submittal.ValueText;
import pilefolio.units.DisplaySystem;
import pilefolio.units.Unit;
import pilefolio.units.Units;

/**
 * The units in which figures are drawn and the words on them.
 *
 * @param system the system of the documents
 */
record DrawingUnits(DisplaySystem system) {
  private static final int LONGEST = 30;

  /** A coherent SI value in the unit that is drawn. */
  double of(double si, Unit declared) {
    return system.of(declared).fromSi(si);
  }

  /** A level or a length, given in m. */
  double metres(double si) {
    return of(si, Units.M);
  }

  /** A value of the numerical work, given in the declared unit itself. */
  double in(double value, Unit declared) {
    return of(declared.toSi(value), declared);
  }

  /** A coherent SI value with its unit. */
  String text(double si, Unit declared) {
    return new ValueText(system).of(si, declared);
  }

  /** Words and a level. */
  Mark level(String words, double si) {
    return new Mark(
        metres(si), words + " " + new ValueText(system).level(si) + " " + symbol(Units.M));
  }

  /** Title of a scale. */
  String scale(String quantity, Unit declared) {
    return quantity + " (" + symbol(declared) + ")";
  }

  /** Symbol of the unit that is drawn. */
  String symbol(Unit declared) {
    return system.of(declared).symbol();
  }

  /** Words of the user on a drawing: short, and no character means anything else than itself. */
  static String words(String words) {
    String line = words.strip();
    String shown = line.length() <= LONGEST ? line : line.substring(0, LONGEST - 1).strip() + "…";
    return shown.replace("\\", "\\\\").replace("_", "\\_").replace("^", "\\^");
  }
}
