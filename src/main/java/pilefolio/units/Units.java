package pilefolio.units;

import static pilefolio.units.Dimension.FORCE;
import static pilefolio.units.Dimension.LENGTH;
import static pilefolio.units.Dimension.MASS;
import static pilefolio.units.Dimension.NONE;
import static pilefolio.units.Dimension.TEMPERATURE;
import static pilefolio.units.Dimension.TIME;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The units of the trade, by name, and the reader of unit texts.
 *
 * <p>Exact factors: 1 in = 25.4 mm, 1 lb = 4.4482216152605 N. A pound is a force here and a
 * kilogram a mass, as the trade uses them.
 */
public final class Units {
  private static final double LB = 4.4482216152605;
  private static final double FT = 0.3048;
  private static final double IN = 0.0254;
  private static final Dimension PRESSURE = FORCE.over(LENGTH.power(2));
  private static final Dimension UNIT_WEIGHT = FORCE.over(LENGTH.power(3));

  private static final Map<String, Unit> ATOMS = new LinkedHashMap<>();

  static {
    atom("m", LENGTH, 1);
    atom("mm", LENGTH, 1e-3);
    atom("cm", LENGTH, 1e-2);
    atom("km", LENGTH, 1e3);
    atom("in", LENGTH, IN);
    atom("ft", LENGTH, FT);
    atom("yd", LENGTH, 3 * FT);
    atom("N", FORCE, 1);
    atom("kN", FORCE, 1e3);
    atom("MN", FORCE, 1e6);
    atom("lb", FORCE, LB);
    atom("lbf", FORCE, LB);
    atom("kip", FORCE, 1e3 * LB);
    atom("kg", MASS, 1);
    atom("g", MASS, 1e-3);
    atom("t", MASS, 1e3);
    atom("Pa", PRESSURE, 1);
    atom("kPa", PRESSURE, 1e3);
    atom("MPa", PRESSURE, 1e6);
    atom("GPa", PRESSURE, 1e9);
    atom("bar", PRESSURE, 1e5);
    atom("psi", PRESSURE, LB / (IN * IN));
    atom("ksi", PRESSURE, 1e3 * LB / (IN * IN));
    atom("psf", PRESSURE, LB / (FT * FT));
    atom("ksf", PRESSURE, 1e3 * LB / (FT * FT));
    atom("tsf", PRESSURE, 2e3 * LB / (FT * FT));
    atom("pcf", UNIT_WEIGHT, LB / (FT * FT * FT));
    atom("pci", UNIT_WEIGHT, LB / (IN * IN * IN));
    atom("plf", FORCE.over(LENGTH), LB / FT);
    atom("klf", FORCE.over(LENGTH), 1e3 * LB / FT);
    atom("s", TIME, 1);
    atom("min", TIME, 60);
    atom("h", TIME, 3600);
    atom("d", TIME, 86400);
    atom("L", LENGTH.power(3), 1e-3);
    atom("J", FORCE.times(LENGTH), 1);
    atom("kJ", FORCE.times(LENGTH), 1e3);
    atom("°C", TEMPERATURE, 1);
    atom("K", TEMPERATURE, 1);
    ATOMS.put("°F", new Unit("°F", TEMPERATURE, 1 / 1.8, -32 / 1.8));
    atom("°", NONE, Math.PI / 180);
    atom("deg", NONE, Math.PI / 180);
    atom("rad", NONE, 1);
    atom("%", NONE, 0.01);
    atom("rev", NONE, 1);
    atom("1", NONE, 1);
    atom("kipft", FORCE.times(LENGTH), 1e3 * LB * FT);
  }

  /** Plain number. */
  public static final Unit ONE = Unit.of("", NONE, 1);

  /** Degree of arc. */
  public static final Unit DEG = Unit.of("°", NONE, Math.PI / 180);

  /** Per cent. */
  public static final Unit PERCENT = Unit.of("%", NONE, 0.01);

  /** Metre; US documents: foot. */
  public static final Unit M = of("m");

  /** Millimetre; US documents: inch. */
  public static final Unit MM = of("mm");

  /** Square metre; US documents: square foot. */
  public static final Unit M2 = of("m²");

  /** Cubic metre; US documents: cubic yard. */
  public static final Unit M3 = of("m³");

  /** Square millimetre; US documents: square inch. */
  public static final Unit MM2 = of("mm²");

  /** Square centimetre; US documents: square inch. */
  public static final Unit CM2 = of("cm²");

  /** Cubic centimetre; US documents: cubic inch. */
  public static final Unit CM3 = of("cm³");

  /** Centimetre to the fourth; US documents: inch to the fourth. */
  public static final Unit CM4 = of("cm⁴");

  /** Centimetre to the sixth; US documents: inch to the sixth. */
  public static final Unit CM6 = of("cm⁶");

  /** Kilonewton; US documents: kip. */
  public static final Unit KN = of("kN");

  /** Kilonewton per metre; US documents: kip per foot. */
  public static final Unit KN_M = of("kN/m");

  /** Kilonewton metre; US documents: kip foot. */
  public static final Unit KNM = of("kN·m");

  /** Kilonewton metre per metre of wall; US documents: kip foot per foot. */
  public static final Unit KNM_M = of("kN·m/m");

  /** Kilopascal; US documents: pound per square foot. */
  public static final Unit KPA = of("kPa");

  /** Megapascal of concrete or ground; US documents: psi. */
  public static final Unit MPA = of("MPa");

  /** Newton per square millimetre of steel; US documents: ksi. */
  public static final Unit N_MM2 = Unit.of("N/mm²", PRESSURE, 1e6);

  /** Gigapascal; US documents: ksi. */
  public static final Unit GPA = of("GPa");

  /** Kilonewton per cubic metre; US documents: pcf. */
  public static final Unit KN_M3 = of("kN/m³");

  /** Kilogram per metre of a section; US documents: kilogram per metre is shown as weight. */
  public static final Unit KG_M = of("kg/m");

  /** Kilogram. */
  public static final Unit KG = of("kg");

  /** Tonne. */
  public static final Unit T = of("t");

  /** Second. */
  public static final Unit S = of("s");

  /** Minute. */
  public static final Unit MIN = of("min");

  /** Hour. */
  public static final Unit H = of("h");

  /** Day. */
  public static final Unit D = of("d");

  /** Degree Celsius, in both systems. */
  public static final Unit CELSIUS = of("°C");

  /** Metre per minute; US documents: foot per minute. */
  public static final Unit M_MIN = of("m/min");

  /** Cubic metre per hour; US documents: cubic yard per hour. */
  public static final Unit M3_H = of("m³/h");

  /** Cubic metre per minute; US documents: cubic yard per minute. */
  public static final Unit M3_MIN = of("m³/min");

  /** Litre; US documents: cubic foot. */
  public static final Unit L = of("L");

  /** Revolution per minute. */
  public static final Unit REV_MIN = of("rev/min");

  /** Pascal; US documents: psf. */
  public static final Unit PA = of("Pa");

  /** Pascal per second; US documents: psf per second. */
  public static final Unit PA_S = of("Pa/s");

  /** Millimetre per metre. */
  public static final Unit MM_M = of("mm/m");

  /** Inverse metre; US documents: inverse foot. */
  public static final Unit PER_M = of("1/m");

  private Units() {}

  private static void atom(String symbol, Dimension dimension, double factor) {
    ATOMS.put(symbol, Unit.of(symbol, dimension, factor));
  }

  /**
   * Reads a unit text of the program itself.
   *
   * @throws IllegalArgumentException if the text is not a unit
   */
  public static Unit of(String text) {
    return find(text)
        .orElseThrow(() -> new IllegalArgumentException("not a unit: \"" + text + "\""));
  }

  /**
   * Reads a unit text as people type it: {@code kN/m3}, {@code kN/m³}, {@code kip-ft}, {@code
   * lb/ft^3}. An empty text or a dash is a plain number.
   */
  public static Optional<Unit> find(String text) {
    String trimmed = text == null ? "" : text.strip();
    if (trimmed.isEmpty() || trimmed.equals("-") || trimmed.equals("–") || trimmed.equals("—")) {
      return Optional.of(ONE);
    }
    if (ATOMS.containsKey(trimmed)) {
      return Optional.of(ATOMS.get(trimmed));
    }
    return UnitText.parse(trimmed, ATOMS);
  }
}
