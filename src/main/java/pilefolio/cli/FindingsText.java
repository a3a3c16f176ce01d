package pilefolio.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import pilefolio.findings.Finding;
import pilefolio.findings.Severity;

/** Findings for the console: a line each, then the counts. */
final class FindingsText {
  private FindingsText() {}

  static void print(PrintWriter console, Path file, List<Finding> findings) {
    String name = file.getFileName().toString();
    for (Finding finding : findings) {
      String word = finding.severity() == Severity.ERROR ? "error  " : "warning";
      console.println(word + " " + finding.line(name) + " [" + finding.code() + "]");
    }
    long errors = findings.stream().filter(f -> f.severity() == Severity.ERROR).count();
    long warnings = findings.size() - errors;
    console.println(
        name
            + ": "
            + (findings.isEmpty()
                ? "no findings"
                : count(errors, "error") + ", " + count(warnings, "warning")));
  }

  private static String count(long number, String noun) {
    return number + " " + noun + (number == 1 ? "" : "s");
  }
}
