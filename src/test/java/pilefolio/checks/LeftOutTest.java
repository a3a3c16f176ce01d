package pilefolio.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import pilefolio.model.Submission;
import pilefolio.standards.DesignBases;
import pilefolio.trace.Verdict.Result;
import pilefolio.workbook.EditedSample;

/** A family that is not asked of a kind of wall says so. */
class LeftOutTest {
  @Test
  void wallsWithoutPrimariesAreNotPassedOver() {
    Submission archive = EditedSample.of("archive-tanners-row").submission();
    Job job = new Job(archive, DesignBases.find("ec7-da1").orElseThrow());
    Set<String> open = new TreeSet<>();
    for (Check check : Checks.ALL) {
      for (CheckResult result : check.run(job)) {
        if (result.verdict().result() == Result.NOT_CHECKED) {
          open.add(result.subject().run() + " " + check.id());
        }
      }
    }
    assertEquals(
        Set.of("R pump-strokes", "R fresh-piles", "R rig-stroke", "S fresh-piles", "S rig-stroke"),
        open);
  }
}
