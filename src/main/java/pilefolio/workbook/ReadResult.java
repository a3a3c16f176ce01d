package pilefolio.workbook;

import java.util.List;
import java.util.Optional;
import pilefolio.findings.Finding;
import pilefolio.findings.Severity;
import pilefolio.model.Submission;

/**
 * What came of reading a workbook.
 *
 * @param submission what the user described; absent if a finding is an error
 * @param findings everything wrong or odd, in the order of the workbook
 * @param inputs every cell that was read and every default taken, in the order of the workbook
 */
public record ReadResult(
    Optional<Submission> submission, List<Finding> findings, List<InputEcho> inputs) {
  /** Copies the lists. */
  public ReadResult {
    findings = List.copyOf(findings);
    inputs = List.copyOf(inputs);
  }

  /** True if a finding is an error. */
  public boolean hasErrors() {
    return findings.stream().anyMatch(finding -> finding.severity() == Severity.ERROR);
  }
}
