package pilefolio.output.figure;

/**
 * A drawing of a fixed size on paper. Draws the same thing every time and computes no engineering
 * number: what it shows has been worked out before.
 */
public interface Figure {
  /** Name by which a document refers to the figure; unique in a document. */
  String id();

  /** Width on paper in mm. */
  double widthMm();

  /** Height on paper in mm. */
  double heightMm();

  /** What the figure shows, as one sentence without the figure number. */
  String caption();

  /** Draws the figure. */
  void draw(Canvas canvas);
}
