package pilefolio.workbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import pilefolio.units.DisplaySystem;

/** The empty workbook. The same call gives the same bytes. */
public final class BlankWorkbook {
  private BlankWorkbook() {}

  /**
   * Writes an empty workbook, replacing a file of that name.
   *
   * @param file where to
   * @param system units it begins with
   * @param names names for the drop-downs of design basis and tolerance set
   * @throws IOException if it cannot be written
   */
  public static void write(Path file, DisplaySystem system, KnownNames names) throws IOException {
    Files.write(file, WorkbookWriter.blank(system, names));
  }
}
