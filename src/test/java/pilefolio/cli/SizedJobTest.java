package pilefolio.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import pilefolio.checks.Family;
import pilefolio.findings.Severity;
import pilefolio.model.Assumption;
import pilefolio.standards.Section;
import pilefolio.standards.SectionTable;
import pilefolio.submittal.Answer;
import pilefolio.submittal.Submittal;
import pilefolio.trace.Verdict.Result;
import pilefolio.units.NumberText;
import pilefolio.workbook.Retyped;

/**
 * What the engine sizes against the second way to the same: every candidate typed into the workbook
 * as a user would, one after the other.
 */
class SizedJobTest {
  private static final Set<Family> STRUCTURE = Set.of(Family.STRUCTURE);
  private static final Set<Family> DEPTH = Set.of(Family.STABILITY, Family.PILE);
  private static final Set<Family> WALL = Set.of(Family.STRUCTURE, Family.STABILITY, Family.PILE);

  @Test
  void theLightestBeamOfAFamilyThatPasses() throws IOException {
    List<Section> family = SectionTable.all().family("HEB");
    Section lightest = null;
    Answer failing = null;
    for (Section section : family) {
      Submittal typed = job("ten-piles", beam(section.name(), ""));
      List<Answer> short1 = falling(typed, "A", STRUCTURE);
      short1.addAll(falling(typed, "B", STRUCTURE));
      if (short1.isEmpty()) {
        lightest = section;
        break;
      }
      failing = worst(short1);
    }
    Submittal sized = job("ten-piles", beam("", "HEB"));
    assertEquals(lightest.name(), sized.job().submission().beams().get(0).section());
    Assumption note = note(sized, "section");
    assertTrue(note.text().startsWith(lightest.name() + ", the lightest that passes"), note.text());
    Section before = family.get(family.indexOf(lightest) - 1);
    assertTrue(note.text().contains(": " + before.name() + " "), note.text());
    assertNames(note, failing);
  }

  /** The depth class of the American tables, on the basis that uses them. */
  @Test
  void theLightestOfADepthClass() throws IOException {
    UnaryOperator<String> us = text -> beam("", "W10").apply(text).replace("| ec7-da1", "| us-asd");
    Submittal sized = job("ten-piles", us);
    String name = sized.job().submission().beams().get(0).section();
    List<Section> family = SectionTable.all().family("W10");
    int at = family.stream().map(Section::name).toList().indexOf(name);
    assertEquals(List.of(), falling(sized, "A", STRUCTURE));
    for (int i = Math.max(0, at - 3); i < at; i++) {
      UnaryOperator<String> lighter =
          beam(family.get(i).name(), "").andThen(t -> t.replace("| ec7-da1", "| us-asd"))::apply;
      assertFalse(falling(job("ten-piles", lighter), "A", STRUCTURE).isEmpty());
    }
  }

  @Test
  void theLeastDeepToe() throws IOException {
    UnaryOperator<String> open =
        text -> text.replaceAll("[|] 2.8  ", "|    ").replaceAll("[|] 3.0  ", "|    ");
    Submittal sized = job("ten-piles", open);
    double toe = sized.job().submission().runs().get(0).toe().orElseThrow().si();
    assertEquals(List.of(), falling(sized, "A", DEPTH));
    Submittal higher =
        job(
            "ten-piles",
            text ->
                text.replaceAll("[|] 2.8  ", "| " + NumberText.fixed(toe + 0.1, 1) + "  ")
                    .replaceAll("[|] 3.0  ", "|    "));
    Answer failing = worst(falling(higher, "A", DEPTH));
    assertNames(note(sized, "toe level of the secondaries"), failing);
  }

  @Test
  void theWidestSpacingOfSoldierBeams() throws IOException {
    Submittal sized = job("archive-tanners-row", spacing(""));
    double spacing = ramp(sized);
    assertTrue(spacing <= 3.0 && spacing >= 1.0, "spacing " + spacing);
    // What fails at every spacing is not a matter of the spacing.
    Set<String> open = questions(sized);
    for (double wider = spacing + 0.1; wider < 3.01; wider += 0.1) {
      Submittal typed =
          job("archive-tanners-row", spacing(NumberText.fixed(Math.rint(10 * wider) * 100, 0)));
      assertFalse(open.containsAll(questions(typed)), wider + " m passes too");
    }
    assertTrue(questions(job("archive-tanners-row", spacing("1000"))).containsAll(open));
  }

  private static Set<String> questions(Submittal submittal) {
    return falling(submittal, "R", WALL).stream()
        .map(a -> a.checkId() + " " + a.result().subject().combination())
        .collect(Collectors.toSet());
  }

  private static double ramp(Submittal submittal) {
    return submittal.job().submission().runs().stream()
        .filter(run -> run.id().equals("R"))
        .findFirst()
        .orElseThrow()
        .line()
        .spacing()
        .si();
  }

  private static UnaryOperator<String> spacing(String millimetres) {
    return text ->
        text.replaceFirst("(?m)^(R  .*[|] 180     [|]) 1800 ", "$1 " + millimetres + " ");
  }

  private static UnaryOperator<String> beam(String section, String family) {
    return text ->
        text.replace(
                "Beam | Section | Steel grade | Yield strength | Bending about\n",
                "Beam | Section | Steel grade | Yield strength | Bending about | Section family\n")
            .replace(
                "B1   | HEB 240 | S355        | 355            | Strong axis",
                "B1 | " + section + " | S355 | 355 | Strong axis | " + family);
  }

  private static Submittal job(String sample, UnaryOperator<String> change) throws IOException {
    Production.Checked checked = Production.check("job.xlsx", Retyped.edited(sample, change));
    assertEquals(
        List.of(),
        checked.findings().stream().filter(f -> f.severity() == Severity.ERROR).toList());
    return checked.submittal();
  }

  private static List<Answer> falling(Submittal submittal, String run, Set<Family> families) {
    List<Answer> falling = new ArrayList<>();
    for (Answer answer : submittal.answers()) {
      if (!answer.derivation()
          && families.contains(answer.result().check().family())
          && answer.result().subject().run().equals(run)
          && answer.verdict().result() != Result.SATISFIED) {
        falling.add(answer);
      }
    }
    return falling;
  }

  private static Answer worst(List<Answer> answers) {
    return answers.stream()
        .max((a, b) -> Double.compare(a.verdict().severity(), b.verdict().severity()))
        .orElseThrow();
  }

  private static Assumption note(Submittal submittal, String what) {
    return submittal.job().submission().assumptions().stream()
        .filter(a -> a.column().equals(what))
        .findFirst()
        .orElseThrow();
  }

  private static void assertNames(Assumption note, Answer failing) {
    String title = failing.title();
    assertTrue(
        note.text()
            .contains(
                "governed by "
                    + title.substring(0, 1).toLowerCase(Locale.ROOT)
                    + title.substring(1)),
        note.text() + " but " + title);
    failing
        .verdict()
        .utilisation()
        .ifPresent(
            u ->
                assertTrue(
                    note.text().endsWith("is used to " + NumberText.fixed(u, 3)), note.text()));
  }
}
