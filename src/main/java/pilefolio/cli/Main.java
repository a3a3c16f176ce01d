package pilefolio.cli;

/** Entry point of the command line. */
public final class Main {
  private Main() {}

  /**
   * Runs one command and exits with its code.
   *
   * @param args the command and its options
   */
  public static void main(String[] args) {
    System.out.println("pilefolio");
  }
}
