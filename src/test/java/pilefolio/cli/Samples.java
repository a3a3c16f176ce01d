package pilefolio.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import pilefolio.submittal.Submittal;

/** The sample workbooks of the repository. */
final class Samples {
  static final Path FOLDER = Path.of("sample-input");
  static final Path WITH_MISTAKES = FOLDER.resolve("with-mistakes.xlsx");

  private Samples() {}

  /** The workbooks that produce a package. */
  static List<Path> good() {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files
          .filter(file -> file.toString().endsWith(".xlsx"))
          .filter(file -> !file.equals(WITH_MISTAKES))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The content of a workbook's package. */
  static Submittal submittal(Path workbook) {
    try {
      Production.Checked checked =
          Production.check(workbook.getFileName().toString(), Files.readAllBytes(workbook));
      if (checked.submittal() == null) {
        throw new AssertionError(workbook + ": " + checked.findings());
      }
      return checked.submittal();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
