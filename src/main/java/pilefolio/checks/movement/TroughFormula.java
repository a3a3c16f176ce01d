package pilefolio.checks.movement;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import pilefolio.analysis.movement.TroughShape;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Choice;
import pilefolio.trace.Reference;

/** A published settlement trough as formulas of a sheet. */
final class TroughFormula {
  private static final Reference UFC = Reference.read("UFC 3-220-20 (2025)", "Eq. 2-5 and 2-6");
  private static final Reference CLOUGH = Reference.memory("Clough and O’Rourke (1990)", "");
  private static final Reference HSIEH = Reference.memory("Hsieh and Ou (1998)", "");

  private final TroughShape shape;

  private TroughFormula(TroughShape shape) {
    this.shape = shape;
  }

  static TroughFormula of(TroughShape shape) {
    return new TroughFormula(shape);
  }

  /** One sheet for each shape. */
  static Map<TroughShape, CalcSheet> sheets(Function<TroughFormula, CalcSheet> make) {
    Map<TroughShape, CalcSheet> sheets = new EnumMap<>(TroughShape.class);
    for (TroughShape shape : TroughShape.values()) {
      sheets.put(shape, make.apply(of(shape)));
    }
    return sheets;
  }

  /** All sheets of several maps. */
  @SafeVarargs
  static CalcSheet[] all(Map<TroughShape, CalcSheet>... maps) {
    List<CalcSheet> sheets = new ArrayList<>();
    for (Map<TroughShape, CalcSheet> map : maps) {
      sheets.addAll(map.values());
    }
    return sheets.toArray(new CalcSheet[0]);
  }

  TroughShape shape() {
    return shape;
  }

  /** Words for titles. */
  String words() {
    return switch (shape) {
      case SAND_TRIANGLE -> "triangle to 2 H";
      case STIFF_CLAY_TRIANGLE -> "triangle to 3 H";
      case SOFT_CLAY_TO_2H -> "trapezoid to 2 H";
      case SOFT_CLAY_TO_1_5H -> "trapezoid to 1.5 H";
      case CONCAVE -> "concave to 4 H";
      case SPANDREL -> "spandrel to 4 H";
    };
  }

  /** Where the shape comes from. */
  Reference reference() {
    return switch (shape) {
      case SAND_TRIANGLE, STIFF_CLAY_TRIANGLE, SOFT_CLAY_TO_1_5H -> UFC;
      case SOFT_CLAY_TO_2H -> CLOUGH;
      case CONCAVE, SPANDREL -> HSIEH;
    };
  }

  /**
   * Movement at a distance.
   *
   * @param most symbol of the greatest movement
   * @param x symbol of the distance from the wall
   * @param h symbol of the retained height
   */
  Choice settlement(String most, String x, String h) {
    return switch (shape) {
      case SAND_TRIANGLE -> triangle(most, x, h, "2");
      case STIFF_CLAY_TRIANGLE -> triangle(most, x, h, "3");
      case SOFT_CLAY_TO_2H -> trapezoid(most, x, h, "2", "1.25");
      case SOFT_CLAY_TO_1_5H -> trapezoid(most, x, h, "1.5", "0.75");
      case CONCAVE ->
          concave(
              Choice.when(x + " ≤ 0.5·" + h, most + "·(0.5 + " + x + "/" + h + ")"), most, x, h);
      case SPANDREL ->
          Choice.when(x + " ≤ 2·" + h, most + "·(1 − 0.636·√(" + x + "/" + h + "))")
              .or(x + " < 4·" + h, most + "·(0.342 − 0.171·√(" + x + "/" + h + "))")
              .otherwise("0");
    };
  }

  /** Horizontal movement: as the settlement, but never less than farther from the wall. */
  Choice horizontal(String most, String x, String h) {
    return shape == TroughShape.CONCAVE
        ? concave(Choice.when(x + " ≤ 0.5·" + h, most), most, x, h)
        : settlement(most, x, h);
  }

  /** Steepest slope of the ground at a distance or farther. */
  Choice steepest(String most, String x, String h) {
    return switch (shape) {
      case SAND_TRIANGLE -> flank(most, x, h, "2", "2");
      case STIFF_CLAY_TRIANGLE -> flank(most, x, h, "3", "3");
      case SOFT_CLAY_TO_2H -> flank(most, x, h, "2", "1.25");
      case SOFT_CLAY_TO_1_5H -> flank(most, x, h, "1.5", "0.75");
      case CONCAVE ->
          Choice.when(x + " < 0.5·" + h, most + "/" + h)
              .or(x + " < 2·" + h, "0.6·" + most + "/" + h)
              .or(x + " < 4·" + h, "0.05·" + most + "/" + h)
              .otherwise("0");
      case SPANDREL ->
          Choice.when(x + " ≤ 2·" + h, most + "·0.636/(2·√(" + x + "·" + h + "))")
              .or(x + " < 4·" + h, most + "·0.171/(2·√(" + x + "·" + h + "))")
              .otherwise("0");
    };
  }

  /** The place of the greatest settlement between two distances. */
  Choice deepest(String near, String far, String h) {
    return shape == TroughShape.CONCAVE
        ? Choice.when(near + " ≥ 0.5·" + h, near).or(far + " ≤ 0.5·" + h, far).otherwise("0.5·" + h)
        : Choice.when(near + " ≤ " + far, near);
  }

  /** Area under the shape over (greatest settlement × height), as a number of a formula. */
  String area() {
    return switch (shape) {
      case SAND_TRIANGLE -> "1";
      case STIFF_CLAY_TRIANGLE -> "1.5";
      case SOFT_CLAY_TO_2H -> "1.375";
      case SOFT_CLAY_TO_1_5H -> "1.125";
      case CONCAVE -> "1.3";
      case SPANDREL -> "0.8952";
    };
  }

  private static Choice triangle(String most, String x, String h, String reach) {
    return Choice.when(
            x + " < " + reach + "·" + h, most + "·(1 − " + x + "/(" + reach + "·" + h + "))")
        .otherwise("0");
  }

  private static Choice trapezoid(String most, String x, String h, String reach, String flank) {
    return Choice.when(x + " ≤ 0.75·" + h, most)
        .or(x + " < " + reach + "·" + h, most + "·(" + reach + " − " + x + "/" + h + ")/" + flank)
        .otherwise("0");
  }

  private static Choice concave(Choice first, String most, String x, String h) {
    return first
        .or(x + " ≤ 2·" + h, most + "·(1 − 0.6·(" + x + "/" + h + " − 0.5))")
        .or(x + " < 4·" + h, most + "·0.05·(4 − " + x + "/" + h + ")")
        .otherwise("0");
  }

  private static Choice flank(String most, String x, String h, String reach, String flank) {
    return Choice.when(x + " < " + reach + "·" + h, most + "/(" + flank + "·" + h + ")")
        .otherwise("0");
  }
}
