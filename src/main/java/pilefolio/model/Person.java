package pilefolio.model;

import pilefolio.findings.CellRef;

/**
 * Someone with a part in the works.
 *
 * @param at the first cell of the row
 * @param role part, such as {@code Temporary works coordinator}
 * @param name name
 * @param organisation organisation
 * @param contact telephone or mail
 */
public record Person(CellRef at, String role, String name, String organisation, String contact) {}
