package pilefolio.workbook;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Names the standards data know, against which texts of a workbook are checked. An empty collection
 * leaves its check out.
 *
 * @param factors ids of the design bases, each with the keys of its factors
 * @param toleranceSets ids of the sets of tolerances
 * @param sections designations of rolled sections; empty means they are not checked
 */
public record KnownNames(
    Map<String, Set<String>> factors,
    SortedSet<String> toleranceSets,
    Optional<SectionNames> sections) {

  /** The designations of rolled sections, which people write in many ways. */
  public interface SectionNames {
    /** True if a section is called so. */
    boolean knows(String designation);

    /** True if sections of such a family or depth class exist. */
    boolean knowsFamily(String family);

    /** A few designations that resemble one, nearest first. */
    List<String> near(String designation);
  }

  /** Copies the collections. */
  public KnownNames {
    factors = Map.copyOf(factors);
    toleranceSets = new TreeSet<>(toleranceSets);
  }

  /** Nothing is known; names are taken as they stand. */
  public static KnownNames none() {
    return new KnownNames(Map.of(), new TreeSet<>(), Optional.empty());
  }

  /** Ids of the design bases, sorted. */
  public SortedSet<String> bases() {
    return new TreeSet<>(factors.keySet());
  }
}
