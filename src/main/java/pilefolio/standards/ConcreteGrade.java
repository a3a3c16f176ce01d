package pilefolio.standards;

import com.fasterxml.jackson.core.type.TypeReference;
import java.util.List;
import java.util.Optional;
import pilefolio.trace.Reference;

/**
 * A strength class of concrete.
 *
 * @param grade name, such as {@code C30/37}
 * @param strength characteristic cylinder strength, MPa
 * @param meanTension mean tensile strength, MPa
 * @param elastic secant modulus, GPa
 * @param reference where the values come from
 */
public record ConcreteGrade(
    String grade, double strength, double meanTension, double elastic, Reference reference) {

  private static final List<ConcreteGrade> ALL =
      DataFile.read("materials/concrete.json", new TypeReference<List<ConcreteGrade>>() {});

  /** Every class. */
  public static List<ConcreteGrade> all() {
    return ALL;
  }

  /** The class with a name, spaces aside, or empty. */
  public static Optional<ConcreteGrade> find(String name) {
    String wanted = name.replace(" ", "");
    return ALL.stream().filter(grade -> grade.grade().equalsIgnoreCase(wanted)).findFirst();
  }

  /** Lower characteristic tensile strength, MPa: 0.7 of the mean. */
  public double lowTension() {
    return 0.7 * meanTension;
  }
}
