package pilefolio.standards;

import com.fasterxml.jackson.core.type.TypeReference;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pilefolio.trace.Reference;
import pilefolio.units.Units;

/**
 * A grade of structural steel.
 *
 * @param grade name, such as {@code S355} or {@code A992}
 * @param standard standard of the grade
 * @param unit unit of every stress of the row
 * @param elastic modulus of elasticity, in the unit
 * @param shear shear modulus, in the unit
 * @param steps strengths by thickness, thinnest first
 * @param reference where the values come from
 */
public record SteelGrade(
    String grade,
    String standard,
    String unit,
    double elastic,
    double shear,
    List<Step> steps,
    Reference reference) {

  /**
   * Strengths up to a thickness.
   *
   * @param upTo greatest thickness, mm
   * @param yield yield strength, in the unit of the row
   * @param ultimate tensile strength, in the unit of the row
   */
  public record Step(double upTo, double yield, double ultimate) {}

  private static final List<SteelGrade> ALL =
      DataFile.read("materials/steel.json", new TypeReference<List<SteelGrade>>() {});

  /** Checks that strength does not grow with thickness. */
  public SteelGrade {
    steps = List.copyOf(steps);
    double thickness = 0;
    double yield = Double.MAX_VALUE;
    for (Step step : steps) {
      if (step.upTo() <= thickness || step.yield() > yield || step.ultimate() <= step.yield()) {
        throw new IllegalArgumentException(grade + ": steps are out of order");
      }
      thickness = step.upTo();
      yield = step.yield();
    }
  }

  /** Every grade. */
  public static List<SteelGrade> all() {
    return ALL;
  }

  /** The grade with a name, spaces and case aside, or empty. */
  public static Optional<SteelGrade> find(String name) {
    String wanted = key(name);
    return ALL.stream().filter(grade -> key(grade.grade()).equals(wanted)).findFirst();
  }

  private static String key(String name) {
    return name.replaceAll("[\\s-]", "").toUpperCase(Locale.ROOT);
  }

  /**
   * Yield strength, Pa, of a plate of a thickness, or empty beyond the last step.
   *
   * @param thickness in m
   */
  public Optional<Double> yieldStrength(double thickness) {
    return step(thickness).map(step -> Units.of(unit).toSi(step.yield()));
  }

  /**
   * Tensile strength, Pa, of a plate of a thickness, or empty beyond the last step.
   *
   * @param thickness in m
   */
  public Optional<Double> tensileStrength(double thickness) {
    return step(thickness).map(step -> Units.of(unit).toSi(step.ultimate()));
  }

  /** Modulus of elasticity, Pa. */
  public double elasticModulus() {
    return Units.of(unit).toSi(elastic);
  }

  /** Shear modulus, Pa. */
  public double shearModulus() {
    return Units.of(unit).toSi(shear);
  }

  private Optional<Step> step(double thickness) {
    // A rolled thickness that equals a limit belongs to it, whatever the last bit says.
    double millimetres = thickness * 1e3 - 1e-9;
    return steps.stream().filter(step -> millimetres <= step.upTo()).findFirst();
  }
}
