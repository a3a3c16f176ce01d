package pilefolio.standards;

import com.fasterxml.jackson.core.type.TypeReference;
import java.util.List;
import pilefolio.trace.Reference;

/**
 * A rule on boring beside a pile whose concrete is fresh.
 *
 * @param id stable name
 * @param title as printed
 * @param diameters distance between centres over pile diameter
 * @param leastDistance least distance between centres, m; 0 if none is stated
 * @param hours time after which a pile is no longer fresh; 0 if the rule asks for strength instead
 * @param note limits of the rule
 * @param reference where it comes from
 */
public record FreshPileRule(
    String id,
    String title,
    double diameters,
    double leastDistance,
    double hours,
    String note,
    Reference reference) {

  private static final List<FreshPileRule> ALL =
      DataFile.read("installation/fresh-piles.json", new TypeReference<List<FreshPileRule>>() {});

  /** Every rule. */
  public static List<FreshPileRule> all() {
    return ALL;
  }

  /**
   * Distance between centres within which a pile counts as a neighbour, m.
   *
   * @param diameter of the larger pile, m
   */
  public double distance(double diameter) {
    return Math.max(leastDistance, diameters * diameter);
  }
}
