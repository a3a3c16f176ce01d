/** What is wrong with a workbook, and where. */
package pilefolio.findings;
