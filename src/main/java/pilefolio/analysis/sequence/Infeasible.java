package pilefolio.analysis.sequence;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * No order that was tried keeps every rule. The search is wide but not a proof that none exists.
 *
 * @param blocked the piles without a day in the best order found, and why
 * @param relaxations single changes with which a programme was then really found
 * @param ordersTried number of orders the search went through
 */
public record Infeasible(List<BlockedPile> blocked, List<Relaxation> relaxations, int ordersTried)
    implements SequenceOutcome {

  /** Copies the lists. */
  public Infeasible {
    blocked = List.copyOf(blocked);
    relaxations = List.copyOf(relaxations);
  }

  /**
   * A pile without a day.
   *
   * @param mark mark of the pile
   * @param rule the rule that stands in the way
   * @param days the days that were left to it, each with what keeps it away; may be empty
   */
  public record BlockedPile(String mark, SequenceRule rule, List<BlockedDay> days) {
    /** Copies the list. */
    public BlockedPile {
      days = List.copyOf(days);
    }
  }

  /**
   * A day on which a pile cannot be made.
   *
   * @param date date
   * @param rule the rule that forbids the day
   * @param other the pile that stands in the way, if one does
   */
  public record BlockedDay(LocalDate date, SequenceRule rule, Optional<String> other) {}

  /** What is changed by a relaxation. */
  public enum Change {
    /** Last age at which primaries can be cut, days: retard or soften the mix, stronger tool. */
    WINDOW_END,
    /** First age at which primaries stand, days: quicker early strength, less retarder. */
    WINDOW_START,
    /** Distance to fresh piles in diameters. */
    FRESH_DIAMETERS,
    /** Minutes of the shift of each rig. */
    SHIFT_MINUTES,
    /** Concrete per day, m³. */
    DAILY_CONCRETE,
    /** Working days per week. */
    WORKING_DAYS,
    /** Days off that are worked after all. */
    DAYS_OFF,
    /** Age difference of the two primaries, days. */
    AGE_DIFFERENCE,
    /** Last day of the programme, days after the start. */
    LATEST_DAY
  }

  /**
   * One change that makes a programme possible.
   *
   * @param change what is changed
   * @param from present value (for windows the tightest of all primaries)
   * @param to value with which a programme was found
   * @param finish last day of that programme
   */
  public record Relaxation(Change change, double from, double to, LocalDate finish) {}
}
