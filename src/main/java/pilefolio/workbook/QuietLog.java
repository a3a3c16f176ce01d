package pilefolio.workbook;

/**
 * Keeps the spreadsheet library from complaining on the error stream that it cannot log. Must be
 * called before any of its classes is used.
 */
public final class QuietLog {
  private static final String PROVIDER = "log4j.provider";

  private QuietLog() {}

  /** Keeps it quiet from now on. */
  public static void set() {
    if (System.getProperty(PROVIDER) == null) {
      System.setProperty(PROVIDER, "org.apache.logging.log4j.simple.internal.SimpleProvider");
    }
  }
}
