package pilefolio;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The package table of DEVELOPERS.md is the rule; there is no other copy of it. */
class ArchitectureTest {
  private static final Pattern ROW =
      Pattern.compile("^\\| (\\d) \\| `(\\w+)` \\| [^|]* \\| ([^|]*) \\|$");
  private static final Map<String, String> LIBRARIES =
      Map.of(
          "Jackson", "com.fasterxml.jackson.",
          "POI", "org.apache.poi.",
          "Hipparchus", "org.hipparchus.",
          "FreeMarker", "freemarker.",
          "Flying Saucer", "org.xhtmlrenderer.",
          "OpenPDF", "com.lowagie.",
          "picocli", "picocli.");

  private record Rule(int level, String libraries) {}

  private static Map<String, Rule> table() throws IOException {
    Map<String, Rule> table = new LinkedHashMap<>();
    for (String line : Files.readAllLines(Path.of("DEVELOPERS.md"))) {
      Matcher row = ROW.matcher(line);
      if (row.matches()) {
        table.put(row.group(2), new Rule(Integer.parseInt(row.group(1)), row.group(3)));
      }
    }
    return table;
  }

  private static JavaClasses classes() {
    return new ClassFileImporter()
        .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
        .importPackages("pilefolio");
  }

  private static String top(String packageName) {
    return packageName.equals("pilefolio") || !packageName.startsWith("pilefolio.")
        ? ""
        : packageName.substring("pilefolio.".length()).split("\\.", 2)[0];
  }

  @Test
  void aPackageUsesOnlyPackagesOfASmallerLevelAndItsOwnLibraries() throws IOException {
    Map<String, Rule> table = table();
    assertTrue(table.size() >= 10, "the table was read: " + table.keySet());
    TreeSet<String> wrong = new TreeSet<>();
    TreeSet<String> seen = new TreeSet<>();
    for (JavaClass one : classes()) {
      String from = top(one.getPackageName());
      Rule rule = table.get(from);
      if (rule == null) {
        wrong.add(one.getName() + " is in no package of the table");
        continue;
      }
      seen.add(from);
      for (Dependency dependency : one.getDirectDependenciesFromSelf()) {
        String target = dependency.getTargetClass().getBaseComponentType().getName();
        String to = top(dependency.getTargetClass().getBaseComponentType().getPackageName());
        if (!to.isEmpty() && !to.equals(from) && table.get(to).level() >= rule.level()) {
          wrong.add(one.getName() + " (" + from + ") uses " + target);
        }
        LIBRARIES.forEach(
            (name, prefix) -> {
              if (target.startsWith(prefix) && !rule.libraries().contains(name)) {
                wrong.add(one.getName() + " (" + from + ") uses " + name);
              }
            });
      }
    }
    assertEquals(new TreeSet<String>(), wrong);
    assertEquals(table.keySet(), seen, "packages of the table that exist");
  }

  @Test
  void packagesFormNoCycles() {
    slices().matching("pilefolio.(*)..").should().beFreeOfCycles().check(classes());
  }

  @Test
  void namesSayWhatAClassIs() {
    for (JavaClass one : classes()) {
      for (String vague : List.of("Util", "Helper", "Manager", "Common")) {
        assertFalse(one.getSimpleName().contains(vague), one.getName());
      }
    }
  }
}
