package pilefolio.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import pilefolio.units.DisplaySystem;
import pilefolio.workbook.BlankWorkbook;

/** Writes an empty workbook to fill in. */
@Command(
    name = "blank",
    mixinStandardHelpOptions = true,
    description = "Writes an empty workbook to fill in.")
final class BlankCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "FILE", description = "The workbook to write, ending in .xlsx.")
  private Path file;

  @Option(
      names = "--units",
      defaultValue = "SI",
      description = "Units of the unit row: ${COMPLETION-CANDIDATES}; default ${DEFAULT-VALUE}.")
  private DisplaySystem units;

  @Option(names = "--replace", description = "Replace a file that is there already.")
  private boolean replace;

  @Override
  public Integer call() throws IOException {
    if (!file.toString().endsWith(".xlsx")) {
      throw new Refusal("The name of the workbook must end in .xlsx, not " + file + ".");
    }
    if (Files.exists(file) && !replace) {
      throw new Refusal(file + " is there already; choose another name or add --replace.");
    }
    Path folder = file.toAbsolutePath().getParent();
    if (!Files.isDirectory(folder)) {
      throw new Refusal("There is no folder " + folder + ".");
    }
    BlankWorkbook.write(file, units, StandardNames.all());
    spec.commandLine().getOut().println("Wrote " + file);
    return ExitCode.SATISFIED;
  }
}
