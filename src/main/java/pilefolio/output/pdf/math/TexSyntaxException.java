package pilefolio.output.pdf.math;

/** A formula uses notation outside the part of TeX that is read, or is not complete. */
public final class TexSyntaxException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** Tells what is wrong and where in the formula. */
  public TexSyntaxException(String problem, int position, String formula) {
    super(problem + " at character " + (position + 1) + " of " + formula);
  }
}
