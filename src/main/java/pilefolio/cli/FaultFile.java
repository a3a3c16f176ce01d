package pilefolio.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Puts the details of a fault of the program into a file, so that the console stays readable. */
final class FaultFile {
  private FaultFile() {}

  /** Writes the details and gives the line for the console. */
  static String write(Throwable fault) {
    try {
      Path file = Files.createTempFile("pilefolio-fault-", ".txt");
      try (PrintWriter out =
          new PrintWriter(Files.newBufferedWriter(file, StandardCharsets.UTF_8))) {
        out.println("pilefolio " + Version.number() + ", Java " + Runtime.version());
        fault.printStackTrace(out);
      }
      return "A fault of the program, not of your workbook: "
          + fault.getMessage()
          + System.lineSeparator()
          + "Details are in "
          + file;
    } catch (IOException e) {
      return "A fault of the program: " + fault + " (and no file for the details: " + e + ")";
    }
  }
}
