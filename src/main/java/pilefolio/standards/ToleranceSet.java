package pilefolio.standards;

import com.fasterxml.jackson.core.type.TypeReference;
import java.util.List;
import java.util.Optional;
import pilefolio.trace.Reference;

/**
 * Tolerances on position and verticality that are agreed for a job.
 *
 * @param id stable name
 * @param title as printed
 * @param plan tolerance on position at the guide wall or platform, m, for small diameters
 * @param planPerDiameter tolerance on position over pile diameter, where it governs; 0 if not used
 * @param planMost greatest tolerance on position, m
 * @param growth growth of the tolerance on position with depth of the cut-off below the platform,
 *     m/m
 * @param verticality n of 1 in n
 * @param verticalityBest n that the better machines of this kind reach
 * @param guideWall true if the set presumes a guide wall
 * @param secant whether overlaps may be designed with it
 * @param note what else to know; may be empty
 * @param reference where the set comes from
 */
public record ToleranceSet(
    String id,
    String title,
    double plan,
    double planPerDiameter,
    double planMost,
    double growth,
    double verticality,
    double verticalityBest,
    boolean guideWall,
    SecantUse secant,
    String note,
    Reference reference) {

  /** Whether overlaps of a secant wall may be designed with a set. */
  public enum SecantUse {
    /** Meant for it. */
    SUITABLE,
    /** Only where the user asks for it. */
    ON_REQUEST,
    /** A general set; too wide. */
    NOT_SUITABLE
  }

  private static final List<ToleranceSet> ALL =
      DataFile.read("installation/tolerances.json", new TypeReference<List<ToleranceSet>>() {});

  /** Checks the ranges. */
  public ToleranceSet {
    if (!(plan > 0 && planMost >= plan && growth >= 0 && planPerDiameter >= 0)
        || !(verticality > 1 && verticalityBest >= verticality)) {
      throw new IllegalArgumentException("tolerance set " + id + " is out of range");
    }
  }

  /** Every set. */
  public static List<ToleranceSet> all() {
    return ALL;
  }

  /** The set with an id, or empty. */
  public static Optional<ToleranceSet> find(String id) {
    return ALL.stream().filter(set -> set.id().equals(id)).findFirst();
  }

  /**
   * Tolerance on position of a pile at the platform, m.
   *
   * @param diameter of the pile, m
   */
  public double plan(double diameter) {
    return Math.min(planMost, Math.max(plan, planPerDiameter * diameter));
  }

  /**
   * Tolerance on position at a cut-off below the platform, m.
   *
   * @param diameter of the pile, m
   * @param depth of the cut-off below the platform, m; not negative
   */
  public double planAt(double diameter, double depth) {
    if (!(depth >= 0)) {
      throw new IllegalArgumentException("depth below the platform is negative: " + depth);
    }
    return plan(diameter) + growth * depth;
  }
}
