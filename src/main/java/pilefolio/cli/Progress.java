package pilefolio.cli;

import java.io.PrintWriter;
import java.nio.file.Path;

/** Tells how far a batch is: a bar on a terminal, plain lines elsewhere. */
abstract class Progress {
  private static final int WIDTH = 28;

  /** The progress that suits where the output goes. */
  static Progress on(PrintWriter console, int total) {
    return Terminal.isWatched() ? new Bar(console, total) : new Lines(console);
  }

  abstract void started(Path workbook);

  abstract void done(Path workbook, Outcome outcome);

  abstract void finish();

  /** A bar that is drawn over itself. */
  private static final class Bar extends Progress {
    private final PrintWriter console;
    private final int total;
    private int done;

    Bar(PrintWriter console, int total) {
      this.console = console;
      this.total = total;
    }

    @Override
    synchronized void started(Path workbook) {
      draw(Workbooks.name(workbook));
    }

    @Override
    synchronized void done(Path workbook, Outcome outcome) {
      done++;
      draw(Workbooks.name(workbook));
    }

    private void draw(String name) {
      int filled = total == 0 ? WIDTH : WIDTH * done / total;
      String bar = "#".repeat(filled) + ".".repeat(WIDTH - filled);
      console.printf("\r[%s] %d of %d  %-40.40s", bar, done, total, name);
      console.flush();
    }

    @Override
    synchronized void finish() {
      console.printf("\r%-90s\r", "");
      console.flush();
    }
  }

  /** One line when a workbook is done. */
  private static final class Lines extends Progress {
    private final PrintWriter console;

    Lines(PrintWriter console) {
      this.console = console;
    }

    @Override
    void started(Path workbook) {
      // A log needs no line for this.
    }

    @Override
    synchronized void done(Path workbook, Outcome outcome) {
      console.println(Workbooks.name(workbook) + ": " + outcome.headline());
      console.flush();
    }

    @Override
    void finish() {
      // Nothing is left on the screen.
    }
  }
}
