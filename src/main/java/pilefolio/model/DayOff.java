package pilefolio.model;

import java.time.LocalDate;
import pilefolio.findings.CellRef;

/**
 * A day on which nobody works.
 *
 * @param at the cell
 * @param date the day
 * @param reason why
 */
public record DayOff(CellRef at, LocalDate date, String reason) {}
