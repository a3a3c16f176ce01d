package pilefolio.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import pilefolio.findings.Finding;
import pilefolio.submittal.Governing;

/**
 * What came of one workbook.
 *
 * @param workbook the workbook
 * @param code its exit code
 * @param headline one line
 * @param folder where the package is, or null
 * @param findings findings of its cells
 * @param governing the governing check of each subject
 */
record Outcome(
    Path workbook,
    int code,
    String headline,
    Path folder,
    List<Finding> findings,
    List<Governing> governing) {

  static Outcome fault(Path workbook, String words) {
    return new Outcome(workbook, ExitCode.FAULT, words, null, List.of(), List.of());
  }

  void print(PrintWriter console) {
    console.println();
    console.println(Workbooks.name(workbook) + ": " + headline);
    if (!findings.isEmpty()) {
      FindingsText.print(console, workbook, findings);
    }
    if (!governing.isEmpty()) {
      console.printf(
          "  %-24s %-44s %-12s %s%n", "subject", "governing check", "utilisation", "result");
      for (Governing row : governing) {
        console.printf(
            "  %-24.24s %-44.44s %-12s %s%n",
            row.subject(), row.check(), row.utilisation(), row.words());
      }
    }
    if (folder != null) {
      console.println("  " + folder);
    }
  }
}
