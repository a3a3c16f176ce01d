package pilefolio.cli;

import java.io.Console;

/** Whether a person watches the output. */
final class Terminal {
  private Terminal() {}

  /** True if input and output are a terminal. */
  @SuppressWarnings("SystemConsoleNull")
  static boolean isWatched() {
    Console console = System.console();
    if (console == null) {
      return false;
    }
    try {
      // From Java 22 on there is a console even where nobody watches; ask it.
      return (boolean) Console.class.getMethod("isTerminal").invoke(console);
    } catch (NoSuchMethodException e) {
      return true;
    } catch (ReflectiveOperationException e) {
      return false;
    }
  }
}
