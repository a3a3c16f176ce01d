/** The embedded typefaces, shared by text, formulas and drawings. */
package pilefolio.output.pdf.face;
