package pilefolio.analysis.sequence;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A day-by-day programme, pile by pile.
 *
 * @param piles the piles in the order they are made
 * @param allPrimariesFirst whether every primary is made before the first secondary
 * @param ordersTried number of orders the search went through
 */
public record Programme(List<PlannedPile> piles, boolean allPrimariesFirst, int ordersTried)
    implements SequenceOutcome {

  /** Copies the list. */
  public Programme {
    piles = List.copyOf(piles);
  }

  /**
   * One pile with its day.
   *
   * @param order number in the order of drilling, from 1
   * @param mark mark of the pile
   * @param day days after the start of the calendar
   * @param date date
   * @param crew rig
   * @param place place in the shift of that rig, from 1
   * @param afterMinutes working minutes of the rig's shift that have gone when it starts
   */
  public record PlannedPile(
      int order,
      String mark,
      int day,
      LocalDate date,
      String crew,
      int place,
      double afterMinutes) {}

  /**
   * The entry of one pile.
   *
   * @param mark mark of the pile
   * @return its entry, if it is in the programme
   */
  public Optional<PlannedPile> pile(String mark) {
    return piles.stream().filter(p -> p.mark().equals(mark)).findFirst();
  }

  /**
   * Last day of the programme.
   *
   * @return days after the start
   */
  public int lastDay() {
    return piles.stream().mapToInt(PlannedPile::day).max().orElse(0);
  }

  /**
   * Days on which at least one pile is made.
   *
   * @return the number of days
   */
  public int drillingDays() {
    return (int) piles.stream().mapToInt(PlannedPile::day).distinct().count();
  }
}
