package pilefolio.model;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import pilefolio.findings.CellRef;

/**
 * On which days piles are made.
 *
 * @param at the cell of the first day
 * @param start first day on which a pile may be made
 * @param workingDays days of the week that are worked
 * @param daysOff days that are not
 * @param startOfShift time of day at which the shift begins, an hour of the day
 */
public record WorkCalendar(
    CellRef at,
    LocalDate start,
    Set<DayOfWeek> workingDays,
    List<DayOff> daysOff,
    Value startOfShift) {
  /** Copies the collections; the days keep their order in the week. */
  public WorkCalendar {
    workingDays = java.util.Collections.unmodifiableSet(new TreeSet<>(workingDays));
    daysOff = List.copyOf(daysOff);
  }

  /** True if piles are made on that day. */
  public boolean isWorked(LocalDate day) {
    return !day.isBefore(start)
        && workingDays.contains(day.getDayOfWeek())
        && daysOff.stream().noneMatch(off -> off.date().equals(day));
  }
}
