package pilefolio.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/** The workbooks that a command line names: files, and folders with the workbooks in them. */
final class Workbooks {
  private Workbooks() {}

  /**
   * Lists the workbooks in the order given; those of a folder by name.
   *
   * @throws Refusal if something is not there, a folder holds none, or two would write to one
   *     folder
   */
  static List<Path> of(List<Path> named) {
    List<Path> found = new ArrayList<>();
    for (Path path : named) {
      if (Files.isDirectory(path)) {
        List<Path> inside = inside(path);
        if (inside.isEmpty()) {
          throw new Refusal("There is no workbook (.xlsx) in the folder " + path + ".");
        }
        found.addAll(inside);
      } else if (Files.exists(path)) {
        found.add(path);
      } else {
        throw new Refusal("There is no file or folder " + path + ".");
      }
    }
    List<Path> distinct =
        found.stream().map(p -> p.toAbsolutePath().normalize()).distinct().toList();
    Map<String, Path> names = new HashMap<>();
    for (Path path : distinct) {
      Path other = names.put(name(path).toLowerCase(Locale.ROOT), path);
      if (other != null) {
        throw new Refusal(
            "Both "
                + other
                + " and "
                + path
                + " would write to the folder "
                + name(path)
                + "; rename one or produce them into different folders.");
      }
    }
    return distinct;
  }

  private static List<Path> inside(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(Files::isRegularFile)
          .filter(file -> isWorkbook(file.getFileName().toString()))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new Refusal("The folder " + folder + " cannot be read: " + e.getMessage());
    }
  }

  private static boolean isWorkbook(String name) {
    String lower = name.toLowerCase(Locale.ROOT);
    // "~$" marks the lock file of a workbook that is open in a spreadsheet program.
    return (lower.endsWith(".xlsx") || lower.endsWith(".xlsm")) && !name.startsWith("~$");
  }

  /** The name of a workbook without its ending; the name of its folder of documents. */
  static String name(Path workbook) {
    String name = workbook.getFileName().toString();
    int dot = name.lastIndexOf('.');
    return dot > 0 ? name.substring(0, dot) : name;
  }
}
