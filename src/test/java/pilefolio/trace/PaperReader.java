package pilefolio.trace;

import java.lang.reflect.Field;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import pilefolio.units.DisplaySystem;
import pilefolio.units.Unit;
import pilefolio.units.Units;

/**
 * Works out a printed line as a person does with a pocket calculator set to degrees: looks at the
 * numbers only and passes over the units. Shares no code with the printer.
 */
public final class PaperReader {
  private static final List<String> UNITS = units();

  private final String text;
  private int at;

  private PaperReader(String text) {
    this.text = text;
  }

  /** The number that a printed expression gives. */
  public static double value(String printed) {
    PaperReader reader = new PaperReader(printed);
    double value = reader.sum();
    reader.skip();
    if (reader.at < printed.length()) {
      throw new AssertionError("cannot read on at " + reader.at + " in: " + printed);
    }
    return value;
  }

  /** Every unit that the program declares, in both systems, and a few of formulas' constants. */
  private static List<String> units() {
    TreeSet<String> known = new TreeSet<>();
    for (Field field : Units.class.getFields()) {
      if (field.getType() == Unit.class) {
        for (DisplaySystem system : DisplaySystem.values()) {
          known.add(system.of(unit(field)).symbol());
        }
      }
    }
    for (String text :
        List.of(
            "m", "mm", "ft", "in", "m²", "mm²", "in²", "kN", "N", "kip", "kPa", "MPa", "psi", "ksf",
            "kN/m³", "pcf", "°", "%", "kPa/m", "m³/m", "ft³/ft", "psf/ft", "m/s", "ft/s", "mm/min",
            "in/min", "1/d", "kg/m³", "kJ", "J", "kN·m²", "kip·ft²", "tsf", "K", "kg/m", "m/s²",
            "N/kg", "rev", "yd³", "d", "kN/kg")) {
      known.add(text);
    }
    known.addAll(
        List.of("kN·m²/m", "kip·ft²/ft", "cm³/m", "in³/ft", "cm⁴/m", "in⁴/ft", "cm²/m", "in²/ft"));
    known.remove(Units.ONE.symbol());
    return known.stream().sorted(Comparator.comparing(String::length).reversed()).toList();
  }

  private static Unit unit(Field field) {
    try {
      return (Unit) field.get(null);
    } catch (IllegalAccessException e) {
      throw new AssertionError(e);
    }
  }

  private double sum() {
    double value = product();
    while (true) {
      if (take("+")) {
        value += product();
      } else if (take("−")) {
        value -= product();
      } else {
        return value;
      }
    }
  }

  private double product() {
    double value = signed();
    while (true) {
      if (take("·")) {
        value *= signed();
      } else if (take("/")) {
        value /= signed();
      } else {
        return value;
      }
    }
  }

  private double signed() {
    return take("−") ? -signed() : power();
  }

  private double power() {
    double base = atom();
    return take("^") ? Math.pow(base, signed()) : base;
  }

  private double atom() {
    skip();
    if (take("(")) {
      double inner = sum();
      need(")");
      return inner;
    }
    if (take("π")) {
      return Math.PI;
    }
    int start = at;
    if (Character.isDigit(text.charAt(at))) {
      while (at < text.length() && "0123456789.".indexOf(text.charAt(at)) >= 0) {
        at++;
      }
      double number = Double.parseDouble(text.substring(start, at));
      passOverUnit();
      return number;
    }
    while (Character.isLetter(text.charAt(at))) {
      at++;
    }
    String name = text.substring(start, at);
    need("(");
    double value = sum();
    while (take(";")) {
      double next = sum();
      value = name.equals("min") ? Math.min(value, next) : Math.max(value, next);
    }
    need(")");
    return switch (name) {
      case "min", "max" -> value;
      case "sin" -> Math.sin(value / 180 * Math.PI);
      case "cos" -> Math.cos(value / 180 * Math.PI);
      case "tan" -> Math.tan(value / 180 * Math.PI);
      case "asin" -> Math.asin(value) / Math.PI * 180;
      case "acos" -> Math.acos(value) / Math.PI * 180;
      case "atan" -> Math.atan(value) / Math.PI * 180;
      case "exp" -> Math.exp(value);
      case "ln" -> Math.log(value);
      case "sqrt" -> Math.sqrt(value);
      case "abs" -> Math.abs(value);
      case "ceil" -> Math.ceil(value - 1e-9);
      case "floor" -> Math.floor(value + 1e-9);
      default -> throw new AssertionError("what is " + name + " in: " + text);
    };
  }

  private void passOverUnit() {
    int mark = at;
    if (at < text.length() && text.charAt(at) == ' ') {
      at++;
    }
    for (String unit : UNITS) {
      int end = at + unit.length();
      // "511.4 m/sin(…)" is metres over a sine, not metres a second.
      boolean whole =
          end >= text.length()
              || (!Character.isLetterOrDigit(text.charAt(end)) && text.charAt(end) != '(');
      if (whole && text.startsWith(unit, at) && (unit.equals("°") || at > mark)) {
        at += unit.length();
        return;
      }
    }
    at = mark;
  }

  private void skip() {
    while (at < text.length() && text.charAt(at) == ' ') {
      at++;
    }
  }

  private boolean take(String sign) {
    skip();
    if (text.startsWith(sign, at)) {
      at += sign.length();
      return true;
    }
    return false;
  }

  private void need(String sign) {
    if (!take(sign)) {
      throw new AssertionError("no " + sign + " at " + at + " in: " + text);
    }
  }
}
