package pilefolio.output.pdf;

/** A template is wrong; the message names it with line and column. */
public final class TemplateFaultException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  TemplateFaultException(String template, Exception cause) {
    super("template " + template + ": " + cause.getMessage(), cause);
  }
}
