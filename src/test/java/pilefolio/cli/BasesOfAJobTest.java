package pilefolio.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import pilefolio.findings.Severity;
import pilefolio.standards.DesignBases;
import pilefolio.standards.DesignBasis;
import pilefolio.submittal.Answer;
import pilefolio.submittal.Submittal;
import pilefolio.trace.Calculation;
import pilefolio.trace.Printer;
import pilefolio.trace.Verdict.Result;
import pilefolio.workbook.Retyped;

/** The same jobs on every design basis. */
class BasesOfAJobTest {
  @TempDir private Path folder;

  static Stream<String> bases() {
    return DesignBases.all().stream().map(DesignBasis::id);
  }

  /** Every basis makes the whole package of the small sample. */
  @ParameterizedTest
  @MethodSource("bases")
  void theSmallSampleIsProduced(String basis) throws IOException {
    Path workbook = folder.resolve("pit.xlsx");
    Files.write(workbook, Retyped.onBasis(basis, "ten-piles"));
    int code = Main.execute("produce", "--out", folder.toString(), workbook.toString());
    assertTrue(code == ExitCode.SATISFIED || code == ExitCode.OPEN, "exit code " + code);
    assertTrue(Files.size(folder.resolve("pit").resolve("calculations.pdf")) > 50_000);
  }

  /**
   * The same questions are asked on every basis, apart from bending beside shear, which only
   * European rules know; each line prints and can be redone.
   */
  @ParameterizedTest
  @ValueSource(strings = {"ten-piles", "car-park-basement", "river-street-pump-station"})
  void everyCheckAnswersOnEveryBasis(String sample) throws IOException {
    Set<String> asked = null;
    for (DesignBasis basis : DesignBases.all()) {
      Submittal submittal = submittal(Retyped.onBasis(basis.id(), sample));
      assertEquals(basis.id(), submittal.job().basis().id());
      for (Answer answer : submittal.answers()) {
        for (Calculation calculation : answer.result().calculations()) {
          assertFalse(new Printer(submittal.system()).print(calculation).toString().isBlank());
        }
        if (answer.verdict().result() == Result.NOT_CHECKED) {
          assertFalse(answer.verdict().toString().isBlank());
        }
      }
      Set<String> ids =
          submittal.answers().stream()
              .map(Answer::checkId)
              .filter(id -> !id.equals("beam-bending-with-shear"))
              .collect(Collectors.toCollection(TreeSet::new));
      asked = asked == null ? ids : asked;
      assertEquals(asked, ids, basis.id());
    }
  }

  /**
   * Four metres of dry sand of 30 degrees held by a cantilever, with 0.4 m of unplanned excavation
   * in the Eurocode. By hand: d = h/(ρ^(1/3) − 1) with ρ the ratio of factored passive to factored
   * active pressure, and one fifth more for the force at the toe.
   *
   * <ul>
   *   <li>ASD: ρ = (3/1.5)/(1/3) = 6, 4 m
   *   <li>LRFD: ρ = 0.75·3/(1.5/3) = 4.5, 4 m
   *   <li>DA1-1: ρ = 9, 4.4 m; DA1-2 and DA3: tan φ′ = tan 30°/1.25, ρ = 5.974, 4.4 m
   *   <li>DA2: ρ = (3/1.4)/(1.35/3) = 4.762, 4.4 m
   * </ul>
   */
  @ParameterizedTest
  @CsvSource({
    "us-asd, ASD, 4.0, 6.0",
    "aashto-lrfd, Strength I, 4.0, 4.5",
    "ec7-da1, DA1-1, 4.4, 9.0",
    "ec7-da1, DA1-2, 4.4, 5.974123",
    "ec7-da2, DA2, 4.4, 4.761905",
    "ec7-da3, DA3, 4.4, 5.974123"
  })
  void embedmentByHand(String basis, String combination, double height, double ratio)
      throws IOException {
    double byHand = 1.2 * height / (Math.cbrt(ratio) - 1);
    Calculation embedment =
        calculation(sand(basis), "embedment-cantilever-simplified", combination);
    assertEquals(byHand, embedment.value("d_r"), 1e-4 * byHand);
  }

  /**
   * The toe the engine sizes follows from the deepest of them, on whole decimetres: 10 − 4 − 0.4 −
   * 6.482 = −0.88 for Design Approach 1, and so on.
   */
  @ParameterizedTest
  @CsvSource({
    "us-asd, 0.1",
    "aashto-lrfd, -1.4",
    "ec7-da1, -0.9",
    "ec7-da2, -2.2",
    "ec7-da3, -0.9"
  })
  void toeSizedOnEachBasis(String basis, double toe) throws IOException {
    assertEquals(
        toe,
        sand(basis).job().submission().runs().get(0).secondary().toe().orElseThrow().si(),
        1e-9);
  }

  /**
   * The moment of the beams, as required of one beam, from the same hand calculation: the shear
   * vanishes where γ_G·K_a·z²/2 = (K_p/F)·y²/2, so y = h/(√ρ − 1) below the excavation, and M =
   * γ·(γ_G·K_a·(h + y)³ − γ_P·(K_p/F)·y³)/6.
   */
  @Test
  void momentsByHand() throws IOException {
    double gamma = 18;
    double ka = 1.0 / 3;
    double y = 4.4 / (Math.sqrt((3 / 1.4) / (1.35 / 3)) - 1);
    double da2 = gamma * (1.35 * ka * Math.pow(4.4 + y, 3) - 3 / 1.4 * Math.pow(y, 3)) / 6;
    assertEquals(1000 * da2, moment("ec7-da2", "DA2"), 1e-3 * 1000 * da2);
    double v = 4 / (Math.sqrt(4.5) - 1);
    double lrfd = gamma * (1.5 * ka * Math.pow(4 + v, 3) - 0.75 * 3 * Math.pow(v, 3)) / 6;
    assertEquals(1000 * lrfd, moment("aashto-lrfd", "Strength I"), 1e-3 * 1000 * lrfd);
  }

  private static double moment(String basis, String combination) throws IOException {
    return calculation(sand(basis), "wall-effects", combination).value("M_E");
  }

  /** The first run of the small sample in dry sand, its toe left to the engine. */
  private static Submittal sand(String basis) throws IOException {
    Submittal submittal =
        submittal(
            Retyped.edited(
                "ten-piles",
                text ->
                    text.replaceFirst("(?m)^Design basis .*$", "Design basis | " + basis)
                        .replaceFirst(
                            "(?m)^Cantilever method .*$", "Cantilever method | Simplified")
                        .replaceAll("(?m)^G1 .*[|] +Fill .*$\n", "")
                        .replaceAll("(?m)^G1 .*[|] +Gravel .*$\n", "")
                        .replaceFirst(
                            "(?m)^G1 .*[|] Sand  .*$",
                            "G1 | Sand | Medium dense SAND | Sand | 10.0 | 18 | 20 | Drained | 30 |"
                                + " 0 | | 20 | test")
                        .replaceFirst("(?m)^G1 (.*)[|] -4.0  ", "G1 $1| -25.0 ")
                        .replaceFirst("[|] 6.2  ( +)[|] 12", "| $1 | 12")
                        .replaceAll("[|] 7.4  ( +)[|] 6.2 .*$", "| 7.4 | | | 0 | 0 |")
                        .replaceAll("(?m)^([AB] *[|] 1 .*)[|] 7.4 .*$", "$1| 6.0 | | | 0 | 0 | ")
                        .replaceAll("[|] 2.8  ", "|    ")
                        .replaceAll("[|] 3.0  ", "|    ")));
    return submittal;
  }

  private static Submittal submittal(byte[] workbook) throws IOException {
    Production.Checked checked = Production.check("job.xlsx", workbook);
    assertEquals(
        List.of(),
        checked.findings().stream().filter(f -> f.severity() == Severity.ERROR).toList());
    return checked.submittal();
  }

  private static Calculation calculation(Submittal submittal, String check, String combination) {
    return submittal.answers().stream()
        .filter(a -> a.checkId().equals(check))
        .filter(a -> a.result().subject().combination().equals(combination))
        .findFirst()
        .orElseThrow()
        .result()
        .calculations()
        .get(0);
  }

  /**
   * The same wall with one change each, by the same closed forms: moments grow with the cube of the
   * height where the excavation is deeper, and the weaker sand of 28 degrees is another wall of the
   * same kind.
   */
  @Test
  void sensitivityByHand() throws IOException {
    Calculation table = calculation(sand("us-asd"), "sensitivity", "");
    var rows = table.table("changes").rows();
    assertEquals(
        List.of("friction angle 2° less, s_u 15 % less", "excavation 0.3 m deeper"),
        rows.stream().map(r -> r.label()).toList());
    assertEquals(moment(4, 28) / moment(4, 30), rows.get(0).values().get("r_M"), 1e-3);
    assertEquals(Math.pow(4.3 / 4, 3), rows.get(1).values().get("r_M"), 1e-3);
    assertEquals(4.3 * 4.3 / 16, rows.get(1).values().get("r_V"), 1e-3);
    double deeper = 1.2 * 4.3 / (Math.cbrt(6) - 1);
    assertEquals(10 - 4.3 - deeper, rows.get(1).values().get("z_r"), 1e-3);
    // The toe is sized to what the wall as designed needs, so either change turns its answers.
    assertTrue(rows.get(0).values().get("n") > 0);
    assertTrue(rows.get(1).values().get("n") > 0);
  }

  private static double moment(double height, double degrees) {
    double ka = Math.pow(Math.tan(Math.toRadians(45 - degrees / 2)), 2);
    double kp = 1 / ka / 1.5;
    double y = height / (Math.sqrt(kp / ka) - 1);
    return 18 * (ka * Math.pow(height + y, 3) - kp * Math.pow(y, 3)) / 6;
  }
}
