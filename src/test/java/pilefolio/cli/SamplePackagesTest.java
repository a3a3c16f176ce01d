package pilefolio.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfObject;
import com.lowagie.text.pdf.PdfReader;
import com.lowagie.text.pdf.parser.PdfTextExtractor;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pilefolio.trace.Exp4j;

/** The packages of the sample workbooks, as users get them. */
class SamplePackagesTest {
  private static final Set<String> FILES =
      Set.of(
          "calculations.pdf",
          "method-statement.pdf",
          "schedules.xlsx",
          "checker.xlsx",
          "record.json");

  @TempDir private static Path folder;
  private static Path out;

  @BeforeAll
  static void produce() {
    out = folder.resolve("first");
    List<String> args = new ArrayList<>(List.of("produce", "--out", out.toString()));
    Samples.good().forEach(sample -> args.add(sample.toString()));
    int code = Main.execute(args.toArray(String[]::new));
    assertTrue(code == ExitCode.SATISFIED || code == ExitCode.OPEN, "exit code " + code);
  }

  private static List<Path> packages() {
    return Samples.good().stream().map(sample -> out.resolve(Workbooks.name(sample))).toList();
  }

  @Test
  void eachPackageIsCompleteAndNothingElseIsLeftBehind() throws IOException {
    assertEquals(
        packages().stream().map(p -> p.getFileName().toString()).collect(Collectors.toSet()),
        names(out));
    for (Path one : packages()) {
      assertEquals(new TreeSet<>(FILES), new TreeSet<>(names(one)));
    }
  }

  private static Set<String> names(Path in) throws IOException {
    try (Stream<Path> files = Files.list(in)) {
      return files.map(file -> file.getFileName().toString()).collect(Collectors.toSet());
    }
  }

  @Test
  void asecondRunGivesTheSameBytes() throws IOException {
    Path again = folder.resolve("second");
    List<String> args = new ArrayList<>(List.of("produce", "--out", again.toString()));
    args.add("--jobs");
    args.add("1");
    Samples.good().forEach(sample -> args.add(sample.toString()));
    Main.execute(args.toArray(String[]::new));
    for (Path one : packages()) {
      for (String name : names(one)) {
        assertArrayEquals(
            Files.readAllBytes(one.resolve(name)),
            Files.readAllBytes(again.resolve(one.getFileName()).resolve(name)),
            one.getFileName() + "/" + name);
      }
    }
  }

  @Test
  void everyLineOfTheRecordReevaluatesToItsValue() throws IOException {
    for (Path one : packages()) {
      JsonNode record = new ObjectMapper().readTree(one.resolve("record.json").toFile());
      int lines = 0;
      for (JsonNode check : record.path("checks")) {
        Map<String, Double> values = new HashMap<>();
        for (JsonNode line : check.path("lines")) {
          double si = line.path("si").asDouble();
          String where = one.getFileName() + ", " + check.path("id").asText() + ": " + line;
          double tolerance = 1e-9 * Math.abs(si) + 1e-9 * line.path("scale").asDouble(0);
          assertEquals(si, Exp4j.value(line.path("substituted").asText()), tolerance, where);
          assertEquals(si, Exp4j.value(line.path("formula").asText(), values), tolerance, where);
          values.put(line.path("symbol").asText(), si);
          lines++;
        }
      }
      assertTrue(lines > 300, one.getFileName() + ": only " + lines + " lines");
    }
  }

  @Test
  void everyFontIsEmbeddedAndDocumentPropertiesAreSet() throws IOException {
    for (Path one : packages()) {
      for (String name : List.of("calculations.pdf", "method-statement.pdf")) {
        PdfReader reader = new PdfReader(Files.readAllBytes(one.resolve(name)));
        int fonts = 0;
        for (int i = 1; i < reader.getXrefSize(); i++) {
          PdfObject object = reader.getPdfObjectRelease(i);
          if (object instanceof PdfDictionary d
              && PdfName.FONTDESCRIPTOR.equals(d.getAsName(PdfName.TYPE))) {
            assertTrue(d.get(PdfName.FONTFILE2) != null, "not embedded: " + d);
            fonts++;
          }
        }
        assertTrue(fonts > 0, name);
        assertFalse(reader.getInfo().get("Title").isBlank());
        assertFalse(reader.getInfo().get("Author").isBlank());
        assertFalse(reader.getInfo().get("Subject").isBlank());
        assertTrue(reader.getCatalog().get(PdfName.OUTLINES) != null, name + " has no bookmarks");
      }
    }
  }

  @Test
  void contentsNameThePageOnWhichEachHeadingStands() throws IOException {
    Pattern entry = Pattern.compile("^(\\d+(?:\\.\\d+)?) (.+?) (?:\\. ?)+ ?(\\d+)$");
    for (Path one : packages()) {
      PdfReader reader = new PdfReader(Files.readAllBytes(one.resolve("calculations.pdf")));
      PdfTextExtractor text = new PdfTextExtractor(reader);
      int seen = 0;
      for (int page = 2; page <= 5; page++) {
        for (String line : text.getTextFromPage(page).lines().toList()) {
          Matcher match = entry.matcher(line.strip());
          if (match.matches()) {
            seen++;
            String there = text.getTextFromPage(Integer.parseInt(match.group(3)));
            assertTrue(
                there.replaceAll("\\s+", " ").contains(match.group(2)),
                one.getFileName() + ": " + line);
          }
        }
      }
      assertTrue(seen > 20, one.getFileName() + ": only " + seen + " entries read");
    }
  }

  @Test
  void oneBadWorkbookInFiveDoesNotStopTheOtherFour() throws IOException {
    Path batch = Files.createDirectory(folder.resolve("batch"));
    Path small = Samples.FOLDER.resolve("ten-piles.xlsx");
    for (String name : List.of("a", "b", "d", "e")) {
      Files.copy(small, batch.resolve(name + ".xlsx"));
    }
    Files.copy(Samples.WITH_MISTAKES, batch.resolve("c.xlsx"));
    Path to = folder.resolve("batch-out");
    int code = Main.execute("produce", batch.toString(), "--out", to.toString());
    assertEquals(ExitCode.FINDINGS, code);
    assertEquals(Set.of("a", "b", "d", "e"), names(to));
    assertEquals(FILES, names(to.resolve("e")));
  }

  @Test
  void aWorkbookWithMistakesProducesNothing() {
    Path to = folder.resolve("nothing");
    int code = Main.execute("produce", Samples.WITH_MISTAKES.toString(), "--out", to.toString());
    assertEquals(ExitCode.FINDINGS, code);
    assertFalse(Files.exists(to), "nothing is left behind");
  }
}
