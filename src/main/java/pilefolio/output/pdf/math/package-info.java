/**
 * Formulas set as formulas: a part of TeX's notation is read ({@link
 * pilefolio.output.pdf.math.TexParser} lists it), laid out as text and rules in points, and broken
 * at relations and operators when a line is too short.
 */
package pilefolio.output.pdf.math;
