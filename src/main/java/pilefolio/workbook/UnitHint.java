package pilefolio.workbook;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import pilefolio.units.NumberText;
import pilefolio.units.Unit;
import pilefolio.units.Units;

/** Guesses in which unit a number was meant that makes no sense in the one of its column. */
final class UnitHint {
  private static final List<Unit> COMMON =
      List.of(
          Units.of("m"),
          Units.of("mm"),
          Units.of("ft"),
          Units.of("in"),
          Units.of("cm"),
          Units.of("kN/m³"),
          Units.of("pcf"),
          Units.of("kPa"),
          Units.of("psf"),
          Units.of("MPa"),
          Units.of("psi"),
          Units.of("ksi"),
          Units.of("ksf"),
          Units.of("tsf"),
          Units.of("Pa"),
          Units.of("kN"),
          Units.of("kip"),
          Units.of("lb"),
          Units.of("N"),
          Units.of("kN·m"),
          Units.of("kip·ft"),
          Units.of("N·m"),
          Units.of("t"),
          Units.of("kg"),
          Units.of("h"),
          Units.of("min"),
          Units.of("d"),
          Units.of("s"),
          Units.of("m³/h"),
          Units.of("m³/min"),
          Units.of("L"),
          Units.of("m³"),
          Units.of("yd³"),
          Units.of("m/min"),
          Units.of("ft/min"),
          Units.of("m/h"),
          Units.of("°C"),
          Units.of("°F"),
          Units.of("rad"),
          Units.of("%"),
          Units.of("°"));

  private static final Set<String> STRENGTH = Set.of("MPa", "psi", "ksi", "N/mm²");

  private UnitHint() {}

  /** A question such as {@code was it entered in pcf?}, if one unit makes sense of the number. */
  static Optional<String> find(double entered, Unit unit, Range sensible) {
    if (!sensible.isLimited()) {
      return Optional.empty();
    }
    return COMMON.stream()
        .filter(other -> other.fits(unit) && !other.symbol().equals(unit.symbol()))
        .filter(other -> other.factor() != unit.factor() || other.offset() != unit.offset())
        .filter(other -> isOfTheTrade(unit, other))
        .filter(other -> sensible.contains(other.toSi(entered)))
        .findFirst()
        .map(
            other ->
                "was it entered in "
                    + name(other)
                    + "? then it is "
                    + NumberText.significant(unit.fromSi(other.toSi(entered)), 3)
                    + Range.spaced(unit));
  }

  /** Strengths of concrete and steel are not given in units of earth pressure. */
  private static boolean isOfTheTrade(Unit unit, Unit other) {
    return !STRENGTH.contains(unit.symbol()) || STRENGTH.contains(other.symbol());
  }

  private static String name(Unit unit) {
    return switch (unit.symbol()) {
      case "%" -> "per cent";
      case "rad" -> "radians";
      case "°" -> "degrees";
      default -> unit.symbol();
    };
  }
}
