package pilefolio;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The list of third-party parts names exactly the libraries that are shipped. */
class ThirdPartyTest {
  /** Libraries of the tests, by the beginning of their names; they are not shipped. */
  private static final List<String> TEST_ONLY =
      List.of(
          "junit-", "surefire-", "opentest4j", "apiguardian", "exp4j", "archunit", "common-java5");

  private static final Pattern VERSION = Pattern.compile("-\\d[\\w.]*\\.jar$");

  @Test
  void everyShippedLibraryIsListedWithItsLicence() throws IOException {
    Set<String> shipped = new TreeSet<>();
    String path = System.getProperty("java.class.path");
    for (String entry : path.split(File.pathSeparator, -1)) {
      String name = new File(entry).getName();
      if (name.endsWith(".jar") && TEST_ONLY.stream().noneMatch(name::startsWith)) {
        shipped.add(VERSION.matcher(name).replaceFirst(""));
      }
    }
    assertEquals(shipped, listed());
  }

  private static Set<String> listed() throws IOException {
    Set<String> listed = new TreeSet<>();
    try (InputStream in = ThirdPartyTest.class.getResourceAsStream("/META-INF/THIRD-PARTY.txt")) {
      boolean table = false;
      for (String line : new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList()) {
        if (line.startsWith("-----")) {
          table = true;
        } else if (table && line.isBlank()) {
          break;
        } else if (table) {
          listed.add(line.substring(0, line.indexOf(' ')));
        }
      }
    }
    return listed;
  }
}
