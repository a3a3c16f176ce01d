package pilefolio.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The workbooks in {@code sample-input} are what their readable sources in {@code
 * src/test/resources/samples} say. {@code mvn test -Dtest=SampleWorkbooksTest -Dgolden=write}
 * writes them again, and fails so that the change is looked at.
 */
class SampleWorkbooksTest {
  static final Path FOLDER = Path.of("sample-input");

  @ParameterizedTest
  @ValueSource(strings = {"ten-piles"})
  void isWhatItsSourceSays(String name) throws IOException {
    byte[] wanted = TextTables.sample(name).bytes();
    Path file = FOLDER.resolve(name + ".xlsx");
    if ("write".equals(System.getProperty("golden"))) {
      Files.createDirectories(FOLDER);
      Files.write(file, wanted);
      fail(file + " was written; look at the difference and run again without -Dgolden=write");
    }
    assertEquals(parts(wanted), parts(Files.readAllBytes(file)), "source and " + file + " differ");
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
