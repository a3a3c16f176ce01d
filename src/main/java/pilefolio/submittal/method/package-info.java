/**
 * The content of the method statement: plain records of final texts, picked from the workbook and
 * from the results of the checks. No engineering number is worked out here. Every number travels as
 * a {@link pilefolio.submittal.method.Fact} with the cell or the calculation it comes from; the
 * wording around it stands in the template.
 */
package pilefolio.submittal.method;
