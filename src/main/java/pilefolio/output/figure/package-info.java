/**
 * Drawings on paper. A {@link pilefolio.output.figure.Figure} has a size in mm and draws itself on
 * a {@link pilefolio.output.figure.Canvas}; the document decides where it stands. Nothing here
 * computes an engineering number: figures show what they are given.
 *
 * <p>Coordinates are mm from the top left corner. Colours come from {@link
 * pilefolio.output.figure.Palette}, lines from {@link pilefolio.output.figure.Pen}, lettering from
 * {@link pilefolio.output.figure.Lettering}; labels use the markup of {@link
 * pilefolio.output.figure.Label}: {@code K_{a,h}}, {@code m^3}.
 */
package pilefolio.output.figure;
