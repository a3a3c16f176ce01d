package pilefolio.checks.stability;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import pilefolio.analysis.stability.SeepageGrid;
import pilefolio.checks.Check;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Job;
import pilefolio.model.Submission;
import pilefolio.standards.DesignBases;
import pilefolio.trace.Verdict;
import pilefolio.workbook.EditedSample;

/** To which jobs the questions about the ground apply, and with which values; hand calculations. */
class GroundStabilityTest {
  private static final String SAND =
      "Drained  | 33             | 0        |                    | 17";
  private static final String GRAVEL =
      "Drained  | 37             | 0        |                    | 34";
  private static final String RIG = "| Tool | Displacement limit";
  private static final String STAGE =
      "A   | 1     | Excavate to formation | 7.4              | 6.2                | 6.2   ";

  private static EditedSample small() {
    return EditedSample.of("ten-piles");
  }

  private static String clay(int strength, String blows) {
    return "Undrained |               |          | " + strength + "                 | " + blows;
  }

  private static EditedSample width(EditedSample sample, String width) {
    return sample
        .replace(RIG, "| Tool | Excavation width | Displacement limit")
        .replace("| R1  | T1   | 40 ", "| R1  | T1   | " + width + " | 40 ");
  }

  private static List<CheckResult> results(Check check, Submission submission) {
    return check.run(new Job(submission, DesignBases.find("us-asd").orElseThrow())).stream()
        .filter(r -> r.subject().run().equals("A"))
        .toList();
  }

  private static CheckResult only(Check check, Submission submission) {
    List<CheckResult> results = results(check, submission);
    assertEquals(1, results.size());
    return results.get(0);
  }

  @Test
  void nothingIsAskedWhereTheQuestionDoesNotApply() {
    Submission sand = small().submission();
    for (Check check :
        List.of(
            new BasalHeaveCheck(),
            new HydraulicHeave(),
            new Piping(),
            new ClayPlugUplift(),
            new VerticalEquilibrium(),
            new ToeBearing())) {
      assertEquals(List.of(), results(check, sand), check.id());
    }
    assertEquals(1, results(new OverallStability(), sand).size());
  }

  /** 17.5·1 + 18.5·1.6 + 10 − 20·1.6/1.8 = 39.32 kPa drive against 5.7·20 = 114 kPa. */
  @Test
  void basalHeaveOverStifferGround() {
    Submission soft = width(small().replace(SAND, clay(20, "17")), "6").submission();
    CheckResult result = only(new BasalHeaveCheck(), soft);
    assertEquals(1.8, result.value("B_1"), 1e-9);
    assertEquals(39322, result.value("p"), 1);
    assertEquals(114000 / 39322.2, result.value("F"), 1e-4);
  }

  @Test
  void basalHeaveNeedsTheWidthWhereNothingStifferFollows() {
    EditedSample deep = small().replace(SAND, clay(60, "17")).replace(GRAVEL, clay(70, "34"));
    CheckResult open = only(new BasalHeaveCheck(), deep.submission());
    assertEquals(Verdict.Result.NOT_CHECKED, open.verdict().result());
    assertTrue(open.verdict().reason().contains("width of the excavation"));
    CheckResult known = only(new BasalHeaveCheck(), width(deep, "2").submission());
    assertEquals(2, known.calculations().size(), "deeper than wide: the chart as well");
  }

  @Test
  void seepageRoundTheToe() {
    EditedSample wet =
        small()
            .replace(
                STAGE,
                "A   | 1     | Excavate to formation | 7.4              | 9.5                | 7.4   ");
    CheckResult heave = only(new HydraulicHeave(), wet.submission());
    assertEquals(2.1, heave.value("h"), 1e-9);
    assertEquals(4.6, heave.value("D"), 1e-9);
    assertEquals(6.7, heave.value("D_1"), 1e-6);
    // 1.8 m of sand at 20 and 2.8 m of gravel at 21 kN/m³.
    assertEquals((1.8 * 20000 + 2.8 * 21000) / 4.6, heave.value("γ"), 1e-6);
    CheckResult piping = only(new Piping(), wet.submission());
    assertEquals((20 - 9.81) / 9.81, piping.value("i_c"), 1e-9);
    double wide = heave.value("h_a");
    Submission pit = width(wet, "9.2").submission();
    CheckResult narrow = only(new HydraulicHeave(), pit);
    assertTrue(narrow.value("h_a") > 1.4 * wide, "water of the other wall crowds in");
    assertTrue(only(new Piping(), pit).value("i_e") > piping.value("i_e"));
  }

  /** Two formulations: finite volumes of the check, differences on a square grid of the tests. */
  @Test
  void narrowExcavationAgainstAnotherGrid() {
    ToeSeepage seepage = new ToeSeepage(0, 6, 4, 10, 20, 20);
    double other = new SeepageGrid(4, 10, 6, 0.5, 40, 8, 36).meanHead(2);
    assertEquals(other, seepage.between(16).meanExcessHeadAtToe(2), 0.03 * other);
    double exact = seepage.solved().meanHeadUnderPrism();
    assertEquals(exact, seepage.between(160).meanExcessHeadAtToe(2), 0.03 * exact);
  }

  @Test
  void clayBetweenExitAndToeStopsTheFlow() {
    EditedSample wet =
        small()
            .replace(
                STAGE,
                "A   | 1     | Excavate to formation | 7.4              | 9.5                | 7.4   ")
            .replace(SAND, clay(40, "17"));
    assertEquals(List.of(), results(new HydraulicHeave(), wet.submission()));
    // 1.8 m of clay at 20 kN/m³ over gravel whose water rises to 9.5.
    CheckResult plug = only(new ClayPlugUplift(), wet.submission());
    assertEquals(1.8 * 20000 / (9810 * 3.9), plug.value("F"), 1e-6);
    assertEquals(Verdict.Result.NOT_SATISFIED, plug.verdict().result());
  }

  @Test
  void softClaySlidesSooner() {
    double sand = only(new OverallStability(), small().submission()).value("F");
    EditedSample soft = small().replace(SAND, clay(20, "17")).replace(GRAVEL, clay(20, "34"));
    assertTrue(only(new OverallStability(), soft.submission()).value("F") < sand);
  }
}
