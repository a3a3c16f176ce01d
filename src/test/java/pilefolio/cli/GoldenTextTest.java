package pilefolio.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.lowagie.text.pdf.PdfReader;
import com.lowagie.text.pdf.parser.PdfTextExtractor;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The text of the small sample's documents, page by page, so that a change of any printed number or
 * word is looked at. {@code mvn test -Dtest=GoldenTextTest -Dgolden=write} writes it anew and still
 * fails.
 */
class GoldenTextTest {
  private static final Path GOLDEN = Path.of("src/test/resources/golden/ten-piles");

  @TempDir private Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"calculations", "method-statement"})
  void textOfTheDocumentIsThatOfTheLastReview(String name) throws IOException {
    int code = Main.execute("produce", "sample-input/ten-piles.xlsx", "--out", folder.toString());
    assertEquals(ExitCode.SATISFIED, code);
    String found = text(folder.resolve("ten-piles").resolve(name + ".pdf"));
    assertTrue(found.length() > 10_000);
    Path golden = GOLDEN.resolve(name + ".txt");
    String expected = Files.exists(golden) ? Files.readString(golden) : "";
    if (!found.equals(expected) && System.getProperty("golden", "").equals("write")) {
      Files.createDirectories(GOLDEN);
      Files.writeString(golden, found);
    }
    List<String> was = expected.lines().toList();
    List<String> is = found.lines().toList();
    for (int i = 0; i < Math.min(was.size(), is.size()); i++) {
      assertEquals(was.get(i), is.get(i), golden + ", line " + (i + 1));
    }
    assertEquals(was.size(), is.size(), golden + ", count of lines");
  }

  private static String text(Path pdf) throws IOException {
    PdfReader reader = new PdfReader(Files.readAllBytes(pdf));
    PdfTextExtractor extractor = new PdfTextExtractor(reader);
    StringBuilder text = new StringBuilder();
    for (int page = 1; page <= reader.getNumberOfPages(); page++) {
      text.append("=== page ").append(page).append('\n');
      extractor
          .getTextFromPage(page)
          .lines()
          .map(String::strip)
          .filter(line -> !line.isEmpty())
          // The hash of the workbook's bytes follows the packing of the platform.
          .filter(line -> !line.contains("SHA-256"))
          .forEach(line -> text.append(line).append('\n'));
    }
    return text.toString();
  }
}
