package pilefolio.trace;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import pilefolio.units.Dimension;
import pilefolio.units.Unit;
import pilefolio.units.Units;

/** Writes random formulas in the notation whose dimensions fit, and values for their symbols. */
final class RandomFormulas {
  static final Dimension NONE = Dimension.NONE;
  static final Dimension LENGTH = Units.M.dimension();
  static final Dimension AREA = Units.M2.dimension();
  static final Dimension FORCE = Units.KN.dimension();
  static final Dimension PRESSURE = Units.KPA.dimension();
  static final Dimension WEIGHT = Units.KN_M3.dimension();

  /** Symbols in awkward spellings with their declared units. */
  static final Map<String, Unit> SYMBOLS = new LinkedHashMap<>();

  static {
    SYMBOLS.put("D_p", Units.MM);
    SYMBOLS.put("z", Units.M);
    SYMBOLS.put("e_{0,x}", Units.MM);
    SYMBOLS.put("A_s", Units.MM2);
    SYMBOLS.put("A_{c}'", Units.M2);
    SYMBOLS.put("N_Ed", Units.KN);
    SYMBOLS.put("R", Units.KN);
    SYMBOLS.put("σ'_v", Units.KPA);
    SYMBOLS.put("f_ck", Units.MPA);
    SYMBOLS.put("f_y", Units.N_MM2);
    SYMBOLS.put("γ_{G,unf}", Units.KN_M3);
    SYMBOLS.put("φ'_k", Units.DEG);
    SYMBOLS.put("δ", Units.DEG);
    SYMBOLS.put("n", Units.ONE);
    SYMBOLS.put("ξ", Units.ONE);
    SYMBOLS.put("p_r", Units.PERCENT);
  }

  private static final Map<Dimension, List<String>> LITERALS =
      Map.of(
          NONE, List.of("", "", "", "[°]", "[%]"),
          LENGTH, List.of("[m]", "[mm]", "[ft]", "[in]"),
          AREA, List.of("[m²]", "[mm²]", "[in²]"),
          FORCE, List.of("[kN]", "[N]", "[kip]"),
          PRESSURE, List.of("[kPa]", "[MPa]", "[psi]", "[ksf]"),
          WEIGHT, List.of("[kN/m³]", "[pcf]"));

  private final Random random;

  RandomFormulas(long seed) {
    random = new Random(seed);
  }

  /** One of the units in which a result of the dimension may be declared. */
  Unit unit(Dimension dimension) {
    List<Unit> fitting =
        SYMBOLS.values().stream().filter(u -> u.dimension().equals(dimension)).distinct().toList();
    return fitting.get(random.nextInt(fitting.size()));
  }

  /** A dimension a result may have. */
  Dimension dimension() {
    return pick(List.of(NONE, NONE, LENGTH, AREA, FORCE, PRESSURE, WEIGHT));
  }

  /**
   * Values in coherent SI as people type them: whole, short, long, now and then zero or negative.
   */
  Map<String, Double> values() {
    Map<String, Double> values = new LinkedHashMap<>();
    SYMBOLS.forEach((name, unit) -> values.put(name, unit.toSi(number(unit))));
    return values;
  }

  private double number(Unit unit) {
    double size = unit.equals(Units.DEG) ? 40 : unit.equals(Units.ONE) ? 5 : 900;
    double value = size * random.nextDouble() + 0.001;
    switch (random.nextInt(5)) {
      case 0 -> value = Math.rint(value);
      case 1 -> value = Math.rint(value * 10) / 10;
      case 2 -> value = Math.rint(value * 1000) / 1000;
      default -> {
        // As many digits as a double has.
      }
    }
    return random.nextInt(12) == 0 ? -value : value;
  }

  /** A formula of a dimension. */
  String formula(Dimension dimension, int depth) {
    if (depth <= 0 || random.nextInt(8) == 0) {
      return random.nextInt(5) == 0 ? literal(dimension) : symbol(dimension);
    }
    int d = depth - 1;
    return switch (random.nextInt(9)) {
      case 0, 1 -> formula(dimension, d) + sign() + wrapped(formula(dimension, d), 3);
      case 2 -> "(" + formula(dimension, d) + ")" + times() + "(" + formula(NONE, d) + ")";
      case 3 -> "(" + formula(dimension, d) + ")/" + wrapped(formula(NONE, d), 1);
      case 4 -> "−" + wrapped(formula(dimension, d), 1);
      case 5 -> extreme(dimension, d);
      case 6 -> "abs(" + formula(dimension, d) + ")";
      default -> special(dimension, d);
    };
  }

  private String extreme(Dimension dimension, int d) {
    return pick(List.of("min", "max"))
        + "("
        + formula(dimension, d)
        + ", "
        + formula(dimension, d)
        + pick(List.of("; 0", ""))
        + ")";
  }

  private String special(Dimension dimension, int d) {
    if (dimension.equals(LENGTH)) {
      return random.nextBoolean()
          ? "√(abs(" + formula(AREA, d) + "))"
          : "(" + formula(AREA, d) + ")/(" + formula(LENGTH, d) + ")";
    }
    if (dimension.equals(AREA)) {
      return random.nextBoolean()
          ? "(" + formula(LENGTH, d) + ")²"
          : "π/4·" + wrapped(formula(LENGTH, d), 1) + "^2";
    }
    if (dimension.equals(FORCE)) {
      return "(" + formula(PRESSURE, d) + ")·(" + formula(AREA, d) + ")";
    }
    if (dimension.equals(PRESSURE)) {
      return random.nextBoolean()
          ? "(" + formula(WEIGHT, d) + ")·(" + formula(LENGTH, d) + ")"
          : "(" + formula(FORCE, d) + ")/(" + formula(AREA, d) + ")";
    }
    if (dimension.equals(WEIGHT)) {
      return "(" + formula(PRESSURE, d) + ")/(" + formula(LENGTH, d) + ")";
    }
    Dimension any = pick(List.of(LENGTH, AREA, FORCE, PRESSURE, WEIGHT));
    return switch (random.nextInt(10)) {
      case 0 -> "sin(" + formula(NONE, d) + ")";
      case 1 -> "cos(" + angle() + ")";
      case 2 -> "tan(" + angle() + ")^2";
      case 3 -> "atan(" + formula(NONE, d) + ")";
      case 4 -> "exp(−abs(" + formula(NONE, d) + "))";
      case 5 -> "ln(1 + abs(" + formula(NONE, d) + "))";
      case 6 -> "(1 + abs(" + formula(NONE, d) + "))^(" + symbol(NONE) + "/7)";
      case 7 -> pick(List.of("ceil", "floor")) + "(" + formula(NONE, d) + ")";
      case 8 -> "asin(sin(" + angle() + ")/" + pick(List.of("1.25", "2", "3")) + ")";
      default -> "(" + formula(any, d) + ")/(" + formula(any, d) + ")";
    };
  }

  private String angle() {
    return pick(List.of("45[°] − φ'_k/2", "φ'_k + δ", "δ", "2/3·φ'_k", "π/6"));
  }

  private String symbol(Dimension dimension) {
    return pick(
        SYMBOLS.entrySet().stream()
            .filter(e -> e.getValue().dimension().equals(dimension))
            .map(Map.Entry::getKey)
            .toList());
  }

  private String literal(Dimension dimension) {
    String digits = pick(List.of("2", "0.65", "12.5", "3", "101.325", "0.0045", "250"));
    return digits + pick(LITERALS.get(dimension));
  }

  private String wrapped(String text, int oneIn) {
    return random.nextInt(oneIn) == 0 ? "(" + text + ")" : text;
  }

  private String sign() {
    return pick(List.of(" + ", " − ", " − "));
  }

  private String times() {
    return pick(List.of("·", "*"));
  }

  private <T> T pick(List<T> list) {
    return list.get(random.nextInt(list.size()));
  }
}
