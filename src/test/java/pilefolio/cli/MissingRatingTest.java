package pilefolio.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pilefolio.submittal.Submittal;
import pilefolio.trace.Verdict.Result;
import pilefolio.workbook.Retyped;

/** A rating that is not given is never assumed: its check is not made and names what is missing. */
class MissingRatingTest {
  @ParameterizedTest
  @CsvSource({
    "Set-up distance, rig-reach, the set-up distance of R1",
    "Reach, rig-reach, the rated reach of R1",
    "Stroke, rig-stroke, the stroke of R1",
    "Crowd, crowd, the rated crowd of R1"
  })
  void leavesItsCheckOpen(String column, String check, String missing) throws IOException {
    Production.Checked checked =
        Production.check("job.xlsx", Retyped.without("Rigs", column, "ten-piles"));
    assertEquals(List.of(), checked.findings());
    Submittal submittal = checked.submittal();
    assertFalse(submittal.allSatisfied());
    assertEquals(2, submittal.answers(check).size(), "one for each run");
    submittal
        .answers(check)
        .forEach(
            answer -> {
              assertEquals(Result.NOT_CHECKED, answer.verdict().result());
              assertEquals(
                  "The workbook does not give " + missing + ".", answer.verdict().reason());
            });
  }
}
