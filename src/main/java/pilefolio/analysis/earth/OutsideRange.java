package pilefolio.analysis.earth;

/** A method was asked for a value outside the range in which its source states it. */
public final class OutsideRange extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  /**
   * @param message what was outside which range, in a sentence a designer understands
   */
  public OutsideRange(String message) {
    super(message);
  }
}
