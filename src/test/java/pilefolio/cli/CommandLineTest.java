package pilefolio.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Commands, their words and their exit codes. */
class CommandLineTest {
  @TempDir private Path folder;

  /** What a command said, and its exit code. */
  private record Said(int code, String out, String err) {}

  private static Said say(String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code = Main.execute(new PrintWriter(out, true), new PrintWriter(err, true), args);
    return new Said(code, out.toString(), err.toString());
  }

  @Test
  void helpNamesTheCommandsThatWorkAndTheExitCodes() {
    Said said = say("--help");
    assertEquals(ExitCode.SATISFIED, said.code());
    for (String command : List.of("blank", "validate", "produce")) {
      assertTrue(said.out().contains("  " + command + " "), said.out());
    }
    for (String code : List.of("0", "1", "2", "3", "70")) {
      assertTrue(said.out().lines().anyMatch(line -> line.strip().startsWith(code + " ")), code);
    }
    assertFalse(said.out().contains("compare"), "not until it works");
    assertFalse(said.out().contains("verify"), "not until it works");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "prodduce x.xlsx --out y",
        "produce sample-input/ten-piles.xlsx",
        "produce not-there.xlsx --out y",
        "produce sample-input/ten-piles.xlsx --out y --templates not-there",
        "produce sample-input/ten-piles.xlsx --out y --jobs 0",
        "produce src --out y",
        "validate",
        "blank x.xls",
        "blank x.xlsx --units cubits"
      })
  void aWrongCommandLineIsCodeTwoAndSaysWhatIsWrong(String line) {
    Said said = say(line.isEmpty() ? new String[0] : line.split(" ", -1));
    assertEquals(ExitCode.COMMAND_LINE, said.code(), said.err());
    assertFalse(said.err().isBlank());
    assertFalse(Files.exists(Path.of("y")));
  }

  @Test
  void twoWorkbooksOfOneNameAreRefused() throws IOException {
    Path other = Files.createDirectory(folder.resolve("other")).resolve("ten-piles.xlsx");
    Files.copy(Samples.FOLDER.resolve("ten-piles.xlsx"), other);
    Said said =
        say(
            "produce",
            "sample-input/ten-piles.xlsx",
            other.toString(),
            "--out",
            folder.resolve("out").toString());
    assertEquals(ExitCode.COMMAND_LINE, said.code());
    assertTrue(said.err().contains("ten-piles"), said.err());
  }

  @ParameterizedTest
  @ValueSource(strings = {"SI", "US"})
  void aBlankWorkbookIsWrittenOnceAndHasOnlyEmptyCellsToFind(String units) throws IOException {
    Path file = folder.resolve("job.xlsx");
    assertEquals(ExitCode.SATISFIED, say("blank", file.toString(), "--units", units).code());
    assertEquals(ExitCode.COMMAND_LINE, say("blank", file.toString()).code());
    byte[] first = Files.readAllBytes(file);
    say("blank", file.toString(), "--units", units, "--replace");
    assertEquals(first.length, Files.readAllBytes(file).length);
    Said said = say("validate", file.toString());
    assertEquals(ExitCode.FINDINGS, said.code());
    for (String line : said.out().lines().filter(l -> l.contains("▸")).toList()) {
      assertTrue(line.endsWith("[missing]") || line.endsWith("[no-rows]"), line);
    }
  }

  @Test
  void validateSaysEveryFindingAndWritesThemAsJsonAndAsAnAnnotatedCopy() throws IOException {
    Path out = folder.resolve("findings");
    Said said = say("validate", Samples.WITH_MISTAKES.toString(), "--out", out.toString());
    assertEquals(ExitCode.FINDINGS, said.code());
    JsonNode json =
        new ObjectMapper().readTree(out.resolve("with-mistakes-findings.json").toFile());
    long lines = said.out().lines().filter(line -> line.contains(" ▸ ")).count();
    assertTrue(lines >= 20, said.out());
    assertEquals(lines, json.path("findings").size());
    assertTrue(Files.size(out.resolve("with-mistakes-annotated.xlsx")) > 5000);
    for (JsonNode finding : json.path("findings")) {
      String place = finding.path("sheet").asText() + "!" + finding.path("cell").asText();
      assertTrue(said.out().contains(place.replaceAll("!$", "")), place);
    }
  }

  @Test
  void aGoodWorkbookValidatesWithCodeZero() {
    assertEquals(ExitCode.SATISFIED, say("validate", "sample-input/ten-piles.xlsx").code());
  }

  @Test
  void aTemplateOfTheFirmReplacesTheShippedOneAndAWrongOneIsToldWithItsLine() throws IOException {
    Path templates = Files.createDirectory(folder.resolve("templates"));
    String shipped = Files.readString(Path.of("templates/calculations.ftlx"));
    Files.writeString(
        templates.resolve("calculations.ftlx"),
        shipped.replace("<p>Levels are elevations", "<p>Office rule. Levels are elevations"));
    Said good =
        say(
            "produce",
            "sample-input/ten-piles.xlsx",
            "--out",
            folder.resolve("out").toString(),
            "--templates",
            templates.toString());
    assertTrue(good.code() <= ExitCode.OPEN, good.err() + good.out());
    Files.writeString(
        templates.resolve("calculations.ftlx"), shipped.replace("content>", "kontent>"));
    Said wrong =
        say(
            "produce",
            "sample-input/ten-piles.xlsx",
            "--out",
            folder.resolve("out-2").toString(),
            "--templates",
            templates.toString());
    assertEquals(ExitCode.COMMAND_LINE, wrong.code(), wrong.out());
    assertTrue(wrong.out().contains("calculations.ftlx"), wrong.out());
    assertFalse(Files.exists(folder.resolve("out-2").resolve("ten-piles")));
  }
}
