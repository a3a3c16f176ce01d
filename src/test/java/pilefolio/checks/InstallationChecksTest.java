package pilefolio.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pilefolio.analysis.sequence.Crew;
import pilefolio.analysis.sequence.FreshPileRule;
import pilefolio.analysis.sequence.ProgrammeAudit;
import pilefolio.analysis.sequence.SequenceJob;
import pilefolio.analysis.sequence.SequenceRules;
import pilefolio.analysis.sequence.SiteCalendar;
import pilefolio.analysis.sequence.StrengthWindow;
import pilefolio.analysis.sequence.WallPile;
import pilefolio.checks.sequence.ProgrammeFound;
import pilefolio.checks.sequence.Programmes;
import pilefolio.checks.sizing.Sizing;
import pilefolio.model.Submission;
import pilefolio.standards.DesignBases;
import pilefolio.trace.Calculation;
import pilefolio.trace.Printer;
import pilefolio.trace.Verdict;
import pilefolio.units.DisplaySystem;
import pilefolio.workbook.WorkbookReader;

/** The installation checks on whole workbooks. */
class InstallationChecksTest {
  private static final Set<Family> FAMILIES =
      EnumSet.of(Family.GEOMETRY, Family.SEQUENCE, Family.CONCRETE, Family.RIG);

  private static Job job(String sample) throws IOException {
    Submission submission =
        WorkbookReader.read(Path.of("sample-input", sample + ".xlsx")).submission().orElseThrow();
    return Sizing.sized(
        new Job(submission, DesignBases.find(submission.basis().basis()).orElseThrow()));
  }

  @ParameterizedTest
  @ValueSource(strings = {"ten-piles", "car-park-basement", "river-street-pump-station"})
  void everyCheckAnswersAndPrintsInBothSystems(String sample) throws IOException {
    Job job = job(sample);
    List<CheckResult> all = new ArrayList<>();
    for (Check check : Checks.ALL) {
      if (FAMILIES.contains(check.family())) {
        List<CheckResult> results = check.run(job);
        all.addAll(results);
        for (CheckResult result : results) {
          for (Calculation calculation : result.calculations()) {
            assertFalse(new Printer(DisplaySystem.SI).print(calculation).entries().isEmpty());
            assertFalse(new Printer(DisplaySystem.US).print(calculation).entries().isEmpty());
          }
        }
      }
    }
    assertTrue(all.size() > 20, "results: " + all.size());
    for (CheckResult result : all) {
      boolean open = result.verdict().result() == Verdict.Result.NOT_CHECKED;
      assertEquals(open, result.calculations().isEmpty(), result.check().id());
    }
  }

  @Test
  void theProgrammeOfTheSmallSampleKeepsEveryRule() throws IOException {
    Programmes programmes = Programmes.of(job("ten-piles"));
    assertTrue(programmes.programme().isPresent(), programmes.toString());
    assertEquals(
        List.of(),
        ProgrammeAudit.broken(
            programmes.sequence().orElseThrow(), programmes.programme().orElseThrow()));
  }

  /** Ages of two days only, and a distance of six diameters: no order keeps both. */
  @Test
  void whatStandsInTheWayIsNamedAndChangesAreOffered() {
    StrengthWindow window = new StrengthWindow(1.8, 2.2);
    List<WallPile> piles = new ArrayList<>();
    for (int i = 0; i < 9; i++) {
      piles.add(
          i % 2 == 0
              ? WallPile.primary("P" + i, "A", 0.45 * i, 0, 0.6, 60, 5, window)
              : WallPile.secondary(
                  "S" + i, "A", 0.45 * i, 0, 0.6, 60, 5, List.of("P" + (i - 1), "P" + (i + 1))));
    }
    List<Calculation> sheets =
        ProgrammeFound.solve(
            new SequenceJob(
                piles,
                List.of(new Crew("rig", 360, Set.of())),
                new SiteCalendar(
                    LocalDate.of(2027, 3, 1), EnumSet.allOf(DayOfWeek.class), Set.of()),
                new SequenceRules(
                    new FreshPileRule(6, 0, 24),
                    4,
                    0,
                    Double.POSITIVE_INFINITY,
                    SequenceRules.OPEN_END)));
    assertEquals(2, sheets.size());
    assertEquals(Verdict.Result.NOT_SATISFIED, sheets.get(0).verdict().result());
    assertTrue(
        sheets.get(0).table("blocked").rows().get(0).label().contains("S"), sheets.toString());
    List<String> changes =
        sheets.get(1).table("changes").rows().stream().map(row -> row.label()).toList();
    assertTrue(changes.stream().anyMatch(c -> c.startsWith("last age to cut")), changes.toString());
    for (Calculation sheet : sheets) {
      assertFalse(new Printer(DisplaySystem.SI).print(sheet).entries().isEmpty());
    }
  }
}
