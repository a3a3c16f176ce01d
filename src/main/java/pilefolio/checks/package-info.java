/**
 * The checks: one class for each question, in families as the package lies. A check declares its
 * calculation sheets, binds them for its subjects and returns results; it never sees a workbook
 * cell or a page. Everything here is coherent SI: N, m, Pa, s, rad.
 */
package pilefolio.checks;
