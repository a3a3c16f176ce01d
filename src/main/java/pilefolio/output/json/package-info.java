/**
 * JSON for scripts: the record of a package, and the findings of a workbook. Writes what it is
 * given; computes nothing.
 */
package pilefolio.output.json;
