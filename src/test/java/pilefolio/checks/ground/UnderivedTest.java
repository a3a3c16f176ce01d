package pilefolio.checks.ground;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Job;
import pilefolio.model.Submission;
import pilefolio.standards.DesignBases;
import pilefolio.trace.Verdict.Result;
import pilefolio.workbook.EditedSample;

/** What acts without a sheet of its own is said as not checked. */
class UnderivedTest {
  private static List<CheckResult> results(Submission submission) {
    Job job = new Job(submission, DesignBases.find("us-asd").orElseThrow());
    return GroundChecks.ALL.stream()
        .filter(CoefficientCheck.class::isInstance)
        .flatMap(check -> check.run(job).stream())
        .toList();
  }

  @Test
  void levelGroundIsDerived() {
    List<CheckResult> results = results(EditedSample.of("ten-piles").submission());
    assertTrue(!results.isEmpty());
    results.forEach(r -> assertTrue(r.verdict().result() != Result.NOT_CHECKED));
  }

  @Test
  void aSlopeBehindIsNotPassedOver() {
    Submission sloping =
        EditedSample.of("ten-piles")
            .replace("| Tool | Displacement limit", "| Tool | Slope behind | Displacement limit")
            .replace("| R1  | T1   | 40 ", "| R1  | T1   | 10 | 40 ")
            .submission();
    List<CheckResult> results = results(sloping);
    assertEquals(1, results.size());
    assertEquals(Result.NOT_CHECKED, results.get(0).verdict().result());
    assertTrue(results.get(0).verdict().reason().contains("slopes"));
  }
}
