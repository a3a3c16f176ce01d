/**
 * Drawings on paper. A {@link pilefolio.output.figure.Figure} has a size in mm and draws itself on
 * a {@link pilefolio.output.figure.Canvas}; the document decides where it stands. Nothing here
 * computes an engineering number: figures show what they are given.
 *
 * <p>Coordinates are mm from the top left corner. Colours come from {@link
 * pilefolio.output.figure.Palette}, lines from {@link pilefolio.output.figure.Pen}, lettering from
 * {@link pilefolio.output.figure.Lettering}; labels use the markup of {@link
 * pilefolio.output.figure.Label}: {@code K_{a,h}}, {@code m^3}.
 *
 * <p>The figures of the documents, each made from a record of {@link pilefolio.submittal.figure}
 * that holds numbers in printed units and labels ready to print; all are 168 mm wide:
 *
 * <ul>
 *   <li>{@link pilefolio.output.figure.SitePlanFigure}: plan to scale, and strips with marks and
 *       drilling order; split into as many strips as the marks need. Up to about 110 piles fit on
 *       one page; a longer wall needs one plan for each part.
 *   <li>{@link pilefolio.output.figure.SectionFigure}: ground, water, wall, supports at one stage,
 *       and up to two pressure diagrams on the same levels.
 *   <li>{@link pilefolio.output.figure.DepthPlotFigure}: up to four panels against level or depth,
 *       for shear and moment, displacement, resistance.
 *   <li>{@link pilefolio.output.figure.JointOverlapFigure}: overlap left with depth.
 *   <li>{@link pilefolio.output.figure.StrengthWindowFigure}: strength with age and the window for
 *       the neighbours.
 *   <li>{@link pilefolio.output.figure.ProgrammeFigure}: bars day by day; {@code sheets(data)} too.
 *   <li>{@link pilefolio.output.figure.ConcreteHeadFigure}: concrete and shoe while the casing is
 *       drawn.
 * </ul>
 *
 * <p>Other plots: {@link pilefolio.output.figure.PlotFrame} with two {@link
 * pilefolio.output.figure.Axis}, a {@link pilefolio.output.figure.Key} below.
 */
package pilefolio.output.figure;
