package pilefolio.cli;

/** What the user asked for cannot be done as asked, such as a folder that is not there. */
final class Refusal extends RuntimeException {
  private static final long serialVersionUID = 1L;

  Refusal(String message) {
    super(message);
  }
}
