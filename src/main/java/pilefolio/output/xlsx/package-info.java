/**
 * Spreadsheets beside the documents: the checker's workbook with live formulas, and the schedules.
 * Formulas are written from the one tree of each formula; no engineering number is computed here.
 */
package pilefolio.output.xlsx;
