package pilefolio.analysis.sequence;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Set;

/**
 * Days on which piles are made. Concrete ages on all days.
 *
 * @param start first day
 * @param workingDays days of the week on which the site works, at least one
 * @param daysOff holidays and other single days off
 */
public record SiteCalendar(LocalDate start, Set<DayOfWeek> workingDays, Set<LocalDate> daysOff) {

  /**
   * Checks that the site works at all.
   *
   * @throws IllegalArgumentException if there is no working day in the week
   */
  public SiteCalendar {
    workingDays = Set.copyOf(workingDays);
    daysOff = Set.copyOf(daysOff);
    if (workingDays.isEmpty()) {
      throw new IllegalArgumentException("the site works on no day of the week");
    }
  }

  /**
   * Date of a day of the plan.
   *
   * @param day days after the start
   * @return the date
   */
  public LocalDate date(int day) {
    return start.plusDays(day);
  }

  /**
   * Whether piles are made on a day.
   *
   * @param day days after the start
   * @return true on a working day
   */
  public boolean worksOn(int day) {
    LocalDate date = date(day);
    return workingDays.contains(date.getDayOfWeek()) && !daysOff.contains(date);
  }
}
