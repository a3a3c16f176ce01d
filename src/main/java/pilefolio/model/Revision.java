package pilefolio.model;

import java.time.LocalDate;
import pilefolio.findings.CellRef;

/**
 * One revision of the documents.
 *
 * @param at the first cell of the row
 * @param mark mark of the revision
 * @param date date
 * @param description what changed
 * @param by who made it
 */
public record Revision(CellRef at, String mark, LocalDate date, String description, String by) {}
