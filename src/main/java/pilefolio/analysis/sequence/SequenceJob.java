package pilefolio.analysis.sequence;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Everything a day plan is made from.
 *
 * @param piles all piles, those of one run in their order along the wall
 * @param crews one or more rigs
 * @param calendar working days
 * @param rules what every order must keep
 */
public record SequenceJob(
    List<WallPile> piles, List<Crew> crews, SiteCalendar calendar, SequenceRules rules) {

  /**
   * Checks marks and references.
   *
   * @throws IllegalArgumentException if there is no pile or crew, a mark is used twice, a flank is
   *     not a primary of the job, or a pile fits into no shift
   */
  public SequenceJob {
    piles = List.copyOf(piles);
    crews = List.copyOf(crews);
    if (piles.isEmpty() || crews.isEmpty()) {
      throw new IllegalArgumentException("a day plan needs piles and at least one rig");
    }
    Map<String, WallPile> marks = new HashMap<>();
    for (WallPile pile : piles) {
      if (marks.put(pile.mark(), pile) != null) {
        throw new IllegalArgumentException("pile mark used twice: " + pile.mark());
      }
    }
    for (WallPile pile : piles) {
      for (String flank : pile.flanks()) {
        WallPile other = marks.get(flank);
        if (other == null || !other.isPrimary()) {
          throw new IllegalArgumentException(pile.mark() + ": " + flank + " is not a primary here");
        }
      }
    }
  }

  SequenceJob withPiles(List<WallPile> other) {
    return new SequenceJob(other, crews, calendar, rules);
  }

  SequenceJob withCrews(List<Crew> other) {
    return new SequenceJob(piles, other, calendar, rules);
  }

  SequenceJob withCalendar(SiteCalendar other) {
    return new SequenceJob(piles, crews, other, rules);
  }

  SequenceJob withRules(SequenceRules other) {
    return new SequenceJob(piles, crews, calendar, other);
  }
}
