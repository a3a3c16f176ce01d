package pilefolio.standards;

import com.fasterxml.jackson.core.type.TypeReference;
import java.util.List;
import java.util.Objects;
import pilefolio.model.BondGround;
import pilefolio.trace.Reference;

/**
 * Ultimate bond of a grouted anchor before tests, by kind of ground.
 *
 * @param ground kind of ground
 * @param medium what the factor on bond depends on
 * @param transfer ultimate load transfer of a straight shaft grouted by gravity, kN/m; 0 if the
 *     tables give none
 * @param low least ultimate bond stress of the table, kPa
 * @param high greatest ultimate bond stress of the table, kPa
 * @param table table of the load transfer, or of the stress if there is none
 * @param reference where the values come from
 */
public record PresumptiveBond(
    BondGround ground,
    Medium medium,
    double transfer,
    double low,
    double high,
    String table,
    Reference reference) {

  /** What a factor on bond depends on. */
  public enum Medium {
    /** Sand and gravel. */
    COHESIONLESS,
    /** Silt and clay. */
    COHESIVE,
    /** Rock. */
    ROCK
  }

  private static final List<PresumptiveBond> ALL =
      DataFile.read("anchors/bond.json", new TypeReference<List<PresumptiveBond>>() {});

  /** Checks the values. */
  public PresumptiveBond {
    Objects.requireNonNull(ground);
    Objects.requireNonNull(medium);
    Objects.requireNonNull(reference);
    if (!(transfer >= 0) || !(low > 0) || !(high > low)) {
      throw new IllegalArgumentException(ground + ": bond out of order");
    }
  }

  /** Every kind of ground. */
  public static List<PresumptiveBond> all() {
    return ALL;
  }

  /** The bond in a kind of ground. */
  public static PresumptiveBond in(BondGround ground) {
    return ALL.stream().filter(b -> b.ground() == ground).findFirst().orElseThrow();
  }
}
