package pilefolio;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import pilefolio.checks.Check;
import pilefolio.checks.Checks;
import pilefolio.checks.Family;
import pilefolio.workbook.SheetSpec;
import pilefolio.workbook.WorkbookSpec;

/**
 * The tables of the README are made from the code. {@code mvn test -Dtest=ReadmeTest
 * -Dgolden=write} writes them anew and still fails, so that the change is looked at.
 */
class ReadmeTest {
  private static final Path README = Path.of("README.md");

  @Test
  void tableOfSheetsIsThatOfTheWorkbook() throws IOException {
    StringBuilder table = new StringBuilder("| sheet | purpose |\n|---|---|\n");
    for (SheetSpec sheet : WorkbookSpec.SHEETS) {
      table.append("| ").append(sheet.name()).append(" | ").append(sheet.purpose()).append(" |\n");
    }
    compare("sheets", table.toString());
  }

  @Test
  void tableOfChecksIsThatOfTheEngine() throws IOException {
    StringBuilder table = new StringBuilder("| subject | checks |\n|---|---|\n");
    for (Family family : Family.values()) {
      List<String> titles =
          Checks.ALL.stream().filter(c -> c.family() == family).map(Check::title).toList();
      table
          .append("| ")
          .append(family.title())
          .append(" | ")
          .append(String.join("; ", titles))
          .append(" |\n");
    }
    compare("checks", table.toString());
  }

  @Test
  void theTwoCommandsComeFirstAndThePictureIsThere() throws IOException {
    String readme = Files.readString(README);
    assertTrue(readme.indexOf("mvn package -DskipTests -Dproduce") < readme.indexOf("mvn verify"));
    assertTrue(readme.indexOf("mvn verify") < readme.indexOf("!["));
    assertTrue(Files.exists(Path.of("src/docs/calculation-page.png")));
  }

  private static void compare(String part, String expected) throws IOException {
    String readme = Files.readString(README);
    String open = "<!-- " + part + " -->\n";
    String close = "<!-- /" + part + " -->";
    int from = readme.indexOf(open) + open.length();
    int to = readme.indexOf(close);
    assertTrue(from > open.length() && to >= from, "the README has no part " + part);
    String found = readme.substring(from, to);
    if (!found.equals(expected) && System.getProperty("golden", "").equals("write")) {
      Files.writeString(README, readme.substring(0, from) + expected + readme.substring(to));
    }
    assertEquals(expected, found);
  }
}
