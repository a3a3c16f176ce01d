package pilefolio.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pilefolio.model.Submission;

/**
 * The workbooks in {@code sample-input} are what their readable sources in {@code
 * src/test/resources/samples} say. {@code mvn test -Dtest=SampleWorkbooksTest -Dgolden=write}
 * writes them again, and fails so that the change is looked at.
 */
class SampleWorkbooksTest {
  static final Path FOLDER = Path.of("sample-input");

  @ParameterizedTest
  @ValueSource(
      strings = {
        "ten-piles",
        "car-park-basement",
        "river-street-pump-station",
        "archive-tanners-row",
        "with-mistakes"
      })
  void isWhatItsSourceSays(String name) throws IOException {
    byte[] wanted =
        name.equals("with-mistakes") ? Mistakes.workbook() : TextTables.sample(name).bytes();
    Path file = FOLDER.resolve(name + ".xlsx");
    if ("write".equals(System.getProperty("golden"))) {
      Files.createDirectories(FOLDER);
      Files.write(file, wanted);
      fail(file + " was written; look at the difference and run again without -Dgolden=write");
    }
    assertEquals(parts(wanted), parts(Files.readAllBytes(file)), "source and " + file + " differ");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "ten-piles",
        "car-park-basement",
        "river-street-pump-station",
        "archive-tanners-row"
      })
  void hasNoFindings(String name) throws IOException {
    ReadResult result = WorkbookReader.read(FOLDER.resolve(name + ".xlsx"));
    assertEquals(List.of(), result.findings());
    assertTrue(result.submission().isPresent());
  }

  @Test
  void carParkHasNinetyPilesAndTenLayers() throws IOException {
    Submission described =
        WorkbookReader.read(FOLDER.resolve("car-park-basement.xlsx")).submission().orElseThrow();
    int piles = described.runs().stream().mapToInt(run -> run.layout().piles().size()).sum();
    assertEquals(90, piles);
    assertEquals(10, described.profile(described.runs().get(0)).layers().size());
    assertEquals(1, described.supports(described.runs().get(0)).size());
    assertTrue(described.supports(described.runs().get(1)).isEmpty());
  }

  @Test
  void everyPlantedMistakeIsFoundAndNoOther() throws IOException {
    ReadResult result = WorkbookReader.read(FOLDER.resolve("with-mistakes.xlsx"));
    Set<String> wanted = new TreeSet<>();
    Set<String> codes = new TreeSet<>();
    for (Mistakes.Planted one : Mistakes.planted()) {
      if (!one.code().isEmpty()) {
        wanted.add(one.found() + " " + one.code());
        codes.add(one.code());
      }
    }
    Set<String> found = new TreeSet<>();
    result.findings().forEach(one -> found.add(one.where().address() + " " + one.code()));
    assertEquals(wanted, found);
    assertTrue(codes.size() >= 20, codes.size() + " kinds");
    assertTrue(result.submission().isEmpty());
  }

  /** Sums of the unpacked parts: the packing itself may differ between machines. */
  static Map<String, String> parts(byte[] workbook) throws IOException {
    Map<String, String> sums = new TreeMap<>();
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(workbook))) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        CRC32 sum = new CRC32();
        sum.update(in.readAllBytes());
        sums.put(entry.getName(), HexFormat.of().toHexDigits(sum.getValue()));
      }
    }
    return sums;
  }
}
