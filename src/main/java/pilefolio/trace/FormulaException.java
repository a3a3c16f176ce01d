package pilefolio.trace;

/** A formula or a sheet is wrong as written: a programming error, found when the class loads. */
public final class FormulaException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  /** An error with the formula in its message. */
  public FormulaException(String message) {
    super(message);
  }
}
