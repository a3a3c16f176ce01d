package pilefolio.checks.movement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Job;
import pilefolio.checks.movement.NeighbourMovement.Building;
import pilefolio.model.SettlementShape;
import pilefolio.model.Submission;
import pilefolio.standards.DesignBases;
import pilefolio.trace.Printer;
import pilefolio.trace.Verdict.Result;
import pilefolio.units.DisplaySystem;
import pilefolio.workbook.KnownNames;
import pilefolio.workbook.Retyped;
import pilefolio.workbook.WorkbookReader;

/** Sheets of movement against the numerical work, on the sample with three levels of anchors. */
class MovementOnSampleTest {
  private static final String SAMPLE = "archive-tanners-row";

  private static Job job(UnaryOperator<String> change) throws IOException {
    Submission submission =
        WorkbookReader.read(Retyped.edited(SAMPLE, change), KnownNames.none())
            .submission()
            .orElseThrow();
    return new Job(submission, DesignBases.find(submission.basis().basis()).orElseThrow());
  }

  /** Ground a sixth as stiff, so that the houses need the closer look. */
  private static String softer(String source, SettlementShape shape) {
    return source
        .replace("| 18000            |", "| 3000             |")
        .replace("| 45000            |", "| 6000             |")
        .replace("| 40000            |", "| 6000             |")
        .replace("Sand, triangle to 2 H", shape.label());
  }

  @ParameterizedTest
  @EnumSource
  void sheetsSayWhatTheNumericalWorkFound(SettlementShape shape) throws IOException {
    Job job = job(source -> softer(source, shape));
    int compared = 0;
    for (CheckResult r : new NeighbourSettlement().run(job)) {
      NeighbourMovement m = movement(job, r);
      assertEquals(m.worst().settlement(), r.value("δ_max"), 1e-9, r.subject().label());
      compared++;
    }
    for (CheckResult r : new NeighbourDamage().run(job)) {
      Building b = movement(job, r).building().orElseThrow();
      double strain =
          r.calculations().stream()
              .mapToDouble(c -> c.values().getOrDefault("ε", 0.0))
              .max()
              .orElse(0);
      assertEquals(b.strain(), strain, 1e-9, r.subject().label());
      assertTrue(b.screened() || strain > 0, "a building that is looked at closer is strained");
      r.calculations()
          .forEach(
              c -> {
                new Printer(DisplaySystem.SI).print(c);
                new Printer(DisplaySystem.US).print(c);
              });
      compared++;
    }
    for (CheckResult r : new GroundSettlement().run(job)) {
      assertTrue(r.value("V_s") > 0, "the ground settles");
    }
    assertEquals(3, compared, "a house and a main settle, the house is looked at for damage");
  }

  private static NeighbourMovement movement(Job job, CheckResult r) {
    return NeighbourMovement.all(job).stream()
        .filter(m -> m.neighbour().name().equals(r.subject().piles()))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void settledGroundDoesNotRiseAgain() throws IOException {
    Job job = job(source -> source);
    for (NeighbourMovement m : NeighbourMovement.all(job)) {
      double before = 0;
      for (NeighbourMovement.AtStage at : m.stages()) {
        assertTrue(at.settlement() >= before, at.stage().label());
        before = at.settlement();
      }
    }
  }

  @Test
  void triggersAreComparedWithTheWallAndTheHouses() throws IOException {
    List<CheckResult> results = new TriggerLevels().run(job(source -> source));
    assertEquals(3, results.size());
    assertTrue(results.stream().allMatch(r -> r.verdict().satisfied()), results.toString());
    List<CheckResult> low =
        new TriggerLevels()
            .run(job(s -> s.replace("| 18            | 25 ", "| 2             | 25 ")));
    assertEquals(2, low.stream().filter(r -> r.verdict().result() == Result.NOT_SATISFIED).count());
  }

  @Test
  void withoutAModulusNothingIsKnownAndTheCellIsNamed() throws IOException {
    Job job = job(s -> s.replace("| 6000             |", "|                  |"));
    List<CheckResult> results = new NeighbourSettlement().run(job);
    assertEquals(2, results.size());
    for (CheckResult r : results) {
      assertEquals(Result.NOT_CHECKED, r.verdict().result());
      assertTrue(r.verdict().reason().contains("Subgrade modulus"), r.verdict().reason());
    }
  }

  @Test
  void aMeasurementOfNothingIsNamed() throws IOException {
    Job job =
        job(
            s ->
                s.replace(
                    "| A      |                            |",
                    "|        |                            |"));
    assertEquals(
        2,
        new TriggerLevels()
            .run(job).stream()
                .filter(r -> r.verdict().reason().contains("Of run or Of neighbour"))
                .count());
  }
}
