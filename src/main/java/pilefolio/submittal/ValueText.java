package pilefolio.submittal;

import java.util.Optional;
import pilefolio.model.Value;
import pilefolio.units.DisplaySystem;
import pilefolio.units.NumberText;
import pilefolio.units.Unit;

/** Values of the model as documents print them. */
public record ValueText(DisplaySystem system) {

  /** The number with its unit. */
  public String of(Value value, Unit declared) {
    return of(value.si(), declared);
  }

  /** The number with its unit, or a dash. */
  public String of(Optional<Value> value, Unit declared) {
    return value.map(v -> of(v, declared)).orElse("–");
  }

  /** A coherent SI value with its unit. */
  public String of(double si, Unit declared) {
    String unit = system.of(declared).symbol();
    String number = number(si, declared);
    return unit.isEmpty() || unit.equals("°") ? number + unit : number + " " + unit;
  }

  /** The number alone, in the unit of {@link #unit}. */
  public String number(double si, Unit declared) {
    return NumberText.usual(system.of(declared).fromSi(si));
  }

  /** The number alone, or a dash. */
  public String number(Optional<Value> value, Unit declared) {
    return value.map(v -> number(v.si(), declared)).orElse("–");
  }

  /** The unit in which values declared in a unit are printed. */
  public String unit(Unit declared) {
    return system.of(declared).symbol();
  }

  /** A level: always with two decimals. */
  public String level(double si) {
    return NumberText.fixed(
        system.of(pilefolio.units.Units.M).fromSi(si), system == DisplaySystem.SI ? 2 : 1);
  }

  /** A level, or a dash. */
  public String level(Optional<Value> value) {
    return value.map(v -> level(v.si())).orElse("–");
  }
}
